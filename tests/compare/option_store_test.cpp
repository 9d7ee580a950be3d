// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/option_store.h"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <sqlite3.h>
#include <sys/wait.h>
#include <unistd.h>

#include "app/content_hash.h"
#include "tests/app/program.h"

namespace splicewright
{
namespace
{

namespace fs = std::filesystem;

std::shared_ptr<OptionStore> opened(const fs::path& file, StoreLimits limits = {})
{
    const auto store = OptionStore::opened(file, limits);
    if (!store.has_value()) throw std::runtime_error(to_string(store.problems().front()));
    return store.value();
}

std::string key_of(int number) { return content_hash(fmt::format("{}", number)); }

// Behind the back of the store.
void run_sql(const fs::path& file, const std::string& sql)
{
    sqlite3* database = nullptr;
    ASSERT_EQ(sqlite3_open(file.c_str(), &database), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(database, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(database);
    sqlite3_close(database);
}

TEST(ContentHash, IsSha256)
{
    // Source: [FIPS180-4] as in its examples: the message "abc".
    EXPECT_EQ(in_hexadecimal(content_hash("abc")), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_NE(joint_hash({"ab", "c"}), joint_hash({"a", "bc"}));
}

TEST(OptionStore, KeepsWhatWasPutWhenItIsOpenedAgain)
{
    const TemporaryFolder here;
    {
        const auto store = opened(here.path() / "s");
        EXPECT_FALSE(store->value(key_of(1)));
        store->put(key_of(1), "one");
        EXPECT_EQ(store->value(key_of(1)), "one");
    }
    const auto store = opened(here.path() / "s");
    EXPECT_EQ(store->value(key_of(1)), "one");
    EXPECT_FALSE(store->value(key_of(2)));
    EXPECT_EQ(store->n_rows(), 1U);
}

TEST(OptionStore, KeepsWhatWasPutWhenTheProcessIsKilled)
{
    const TemporaryFolder here;
    const pid_t child = ::fork();
    if (child == 0)
    {
        const auto store = opened(here.path() / "s");
        for (int i = 0; i < 50; ++i) store->put(key_of(i), fmt::format("value {}", i));
        ::kill(::getpid(), SIGKILL);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    ASSERT_TRUE(WIFSIGNALED(status));
    const auto store = opened(here.path() / "s");
    for (int i = 0; i < 50; ++i) EXPECT_EQ(store->value(key_of(i)), fmt::format("value {}", i));
}

TEST(OptionStore, DistrustsADamagedRowAndTakesANewOne)
{
    const TemporaryFolder here;
    const fs::path file = here.path() / "s";
    opened(file)->put(key_of(1), "one");
    run_sql(file, "UPDATE outcome SET value = CAST('two' AS BLOB)");
    const auto store = opened(file);
    EXPECT_FALSE(store->value(key_of(1)));
    EXPECT_EQ(store->n_damaged(), 1U);
    store->put(key_of(1), "one");
    EXPECT_EQ(store->value(key_of(1)), "one");
}

TEST(OptionStore, RefusesASecondProcessAndNamesTheFirst)
{
    const TemporaryFolder here;
    const auto store = opened(here.path() / "s");
    const auto second = OptionStore::opened(here.path() / "s");
    ASSERT_FALSE(second.has_value());
    EXPECT_NE(second.problems().front().rule.find(fmt::format("is in use by process {}", ::getpid())),
              std::string::npos);
}

TEST(OptionStore, RefusesFilesThatAreNoStore)
{
    const TemporaryFolder here;
    write_file(here.path() / "text", std::string(5000, 'x'));
    run_sql(here.path() / "other", "CREATE TABLE outcome (a)");
    EXPECT_NE(OptionStore::opened(here.path() / "text").problems().front().rule.find("cannot be read as a store"),
              std::string::npos);
    EXPECT_NE(OptionStore::opened(here.path() / "other").problems().front().rule.find("is no store of this version"),
              std::string::npos);
    EXPECT_NE(OptionStore::opened(here.path()).problems().front().rule.find("is a folder"), std::string::npos);
    EXPECT_FALSE(OptionStore::opened(here.path() / "no" / "such").has_value());
}

TEST(OptionStore, SaysThatTheDiskIsFullAndLosesNothing)
{
    const TemporaryFolder here;
    const fs::path file = here.path() / "s";
    int kept = 0;
    {
        const auto store = opened(file, {8});
        const std::string value(1000, 'v');
        EXPECT_THROW(for (;; ++kept) store->put(key_of(kept), value), CannotCompute);
        EXPECT_GT(kept, 5);
    }
    const auto store = opened(file);
    EXPECT_EQ(store->n_rows(), static_cast<std::uint64_t>(kept));
    for (int i = 0; i < kept; ++i) EXPECT_TRUE(store->value(key_of(i)));
    store->put(key_of(kept), "after room was made");
    EXPECT_TRUE(store->value(key_of(kept)));
}

TEST(OptionStore, MergesWhatIsNewAndLeavesOutWhatIsDamaged)
{
    const TemporaryFolder here;
    const fs::path file = here.path() / "from";
    {
        const auto from = opened(file);
        for (int i = 0; i < 4; ++i) from->put(key_of(i), fmt::format("{}", i));
    }
    run_sql(file, "UPDATE outcome SET value = CAST('x' AS BLOB) WHERE value = CAST('3' AS BLOB)");
    const auto from = opened(file), into = opened(here.path() / "into");
    into->put(key_of(0), "0");
    const Merged merged = merge(*from, *into);
    EXPECT_EQ(merged.taken, 2U);
    EXPECT_EQ(merged.known, 1U);
    EXPECT_EQ(merged.damaged, 1U);
    EXPECT_EQ(into->n_rows(), 3U);
    EXPECT_EQ(into->value(key_of(2)), "2");
}

}  // namespace
}  // namespace splicewright
