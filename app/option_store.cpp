// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/option_store.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sqlite3.h>
#include <sys/file.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstring>

#include "app/content_hash.h"

namespace splicewright
{
namespace
{

namespace fs = std::filesystem;

constexpr int application_id = 0x53575354;  // "SWST", so that no other program's file is taken for a store
constexpr int layout_version = 1;

struct Closed
{
    void operator()(sqlite3* database) const { sqlite3_close(database); }
    void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
};
using Database = std::unique_ptr<sqlite3, Closed>;
using Statement = std::unique_ptr<sqlite3_stmt, Closed>;

std::string checksum(const std::string& key, const std::string& value) { return joint_hash({key, value}); }

std::vector<Problem> refusal(const fs::path& file, std::string rule, std::string fix)
{
    return {{"", 0, 0, "store", fmt::format("\"{}\"", file.string()), std::move(rule), std::move(fix)}};
}

[[noreturn]] void fail(sqlite3* database)
{
    const char* name = sqlite3_db_filename(database, "main");
    throw CannotCompute(
        {"", 0, 0, "store", fmt::format("\"{}\"", name == nullptr ? "" : name),
         fmt::format("could not be used: {}; what was computed before is kept", sqlite3_errmsg(database)),
         "make room on that disk, then start again; a damaged file must be moved away first"});
}

Statement prepared(sqlite3* database, const char* sql)
{
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v2(database, sql, -1, &statement, nullptr) != SQLITE_OK) fail(database);
    return Statement(statement);
}

void execute(sqlite3* database, const std::string& sql)
{
    if (sqlite3_exec(database, sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK) fail(database);
}

std::int64_t number_of(sqlite3* database, const char* sql)
{
    const Statement statement = prepared(database, sql);
    if (sqlite3_step(statement.get()) != SQLITE_ROW) fail(database);
    return sqlite3_column_int64(statement.get(), 0);
}

std::string bytes_of(sqlite3_stmt* statement, int column)
{
    const void* bytes = sqlite3_column_blob(statement, column);
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(statement, column));
    return bytes == nullptr ? std::string() : std::string(static_cast<const char*>(bytes), size);
}

void bind_bytes(sqlite3_stmt* statement, int place, const std::string& bytes)
{
    sqlite3_bind_blob(statement, place, bytes.data(), static_cast<int>(bytes.size()), SQLITE_TRANSIENT);
}

// An open file that no other process has locked; -1 in `descriptor` and the holder's id otherwise.
struct Lock
{
    int descriptor = -1;
    std::string holder;
};

Lock locked(const fs::path& file)
{
    const int descriptor = ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0644);
    if (descriptor < 0) return {-1, ""};
    if (::flock(descriptor, LOCK_EX | LOCK_NB) == 0)
    {
        const std::string id = fmt::format("{}\n", ::getpid());
        const bool told = ::ftruncate(descriptor, 0) == 0 &&
                          ::pwrite(descriptor, id.data(), id.size(), 0) == static_cast<ssize_t>(id.size());
        static_cast<void>(told);  // on a full disk the lock holds all the same, without the id
        return {descriptor, ""};
    }
    std::array<char, 32> text{};
    const ssize_t n = ::pread(descriptor, text.data(), text.size() - 1, 0);
    ::close(descriptor);
    std::string holder(text.data(), n > 0 ? static_cast<std::size_t>(n) : 0);
    holder.erase(holder.find_last_not_of('\n') + 1);
    return {-1, holder.empty() ? "unknown" : holder};
}

// Write-ahead log: a row is whole or absent after a kill. NORMAL waits for the disk at checkpoints only; a power cut
// may take the last rows, which are computed again.
void lay_out(sqlite3* database, StoreLimits limits)
{
    execute(database, "PRAGMA journal_mode = WAL; PRAGMA synchronous = NORMAL; PRAGMA busy_timeout = 10000;");
    if (limits.most_pages > 0) execute(database, fmt::format("PRAGMA max_page_count = {};", limits.most_pages));
    if (number_of(database, "PRAGMA user_version") == layout_version) return;
    execute(database, fmt::format("BEGIN IMMEDIATE;"
                                  "CREATE TABLE outcome (key BLOB PRIMARY KEY, value BLOB NOT NULL, checksum BLOB NOT "
                                  "NULL) WITHOUT ROWID;"
                                  "PRAGMA application_id = {}; PRAGMA user_version = {}; COMMIT;",
                                  application_id, layout_version));
}

// Whether the file is new, or a store of this layout.
bool is_ours(sqlite3* database)
{
    const std::int64_t id = number_of(database, "PRAGMA application_id");
    const std::int64_t layout = number_of(database, "PRAGMA user_version");
    if (id == application_id) return layout == layout_version;
    return id == 0 && layout == 0 && number_of(database, "SELECT count(*) FROM sqlite_master") == 0;
}

}  // namespace

struct OptionStore::Handles
{
    int lock = -1;
    Database database;
    Statement look, insert;

    Handles() = default;
    ~Handles()
    {
        look.reset();
        insert.reset();
        database.reset();
        if (lock >= 0) ::close(lock);
    }
    Handles(const Handles&) = delete;
    Handles& operator=(const Handles&) = delete;
};

OptionStore::OptionStore(std::unique_ptr<Handles> handles) : handles_(std::move(handles)) {}
OptionStore::~OptionStore() = default;

Result<std::shared_ptr<OptionStore>> OptionStore::opened(const fs::path& file, StoreLimits limits)
{
    if (fs::is_directory(file)) return refusal(file, "is a folder", "name a file: --store FILE");
    const fs::path lock_file = file.string() + ".lock";
    Lock lock = locked(lock_file);
    if (!lock.holder.empty())
        return refusal(file, fmt::format("is in use by process {}", lock.holder),
                       "wait until that run has ended, or name another file: --store FILE");
    if (lock.descriptor < 0)
        return refusal(file, fmt::format("cannot be locked: {}", std::strerror(errno)),
                       "name a file in a folder that you may write to: --store FILE");
    auto handles = std::make_unique<Handles>();
    handles->lock = lock.descriptor;
    sqlite3* opened = nullptr;
    const int status = sqlite3_open_v2(file.c_str(), &opened, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, nullptr);
    handles->database.reset(opened);
    if (status != SQLITE_OK)
        return refusal(file, fmt::format("cannot be opened: {}", sqlite3_errstr(status)),
                       "name a file in a folder that you may write to: --store FILE");
    if (const int read = sqlite3_exec(opened, "PRAGMA schema_version", nullptr, nullptr, nullptr); read != SQLITE_OK)
        return refusal(file, fmt::format("cannot be read as a store: {}", sqlite3_errstr(read)),
                       "move it away, or name another file: --store FILE");
    if (!is_ours(opened))
        return refusal(file, "is no store of this version", "move it away, or name another file: --store FILE");
    lay_out(opened, limits);
    handles->look = prepared(opened, "SELECT value, checksum FROM outcome WHERE key = ?1");
    // A row is replaced only when it was damaged: nothing else puts a key twice.
    handles->insert = prepared(opened, "INSERT OR REPLACE INTO outcome (key, value, checksum) VALUES (?1, ?2, ?3)");
    return std::shared_ptr<OptionStore>(new OptionStore(std::move(handles)));
}

std::optional<std::string> OptionStore::value(const std::string& key)
{
    sqlite3_stmt* look = handles_->look.get();
    sqlite3_reset(look);
    bind_bytes(look, 1, key);
    const int status = sqlite3_step(look);
    if (status != SQLITE_DONE && status != SQLITE_ROW) fail(handles_->database.get());
    std::optional<std::string> found;
    if (status == SQLITE_ROW)
    {
        std::string value = bytes_of(look, 0);
        if (bytes_of(look, 1) == checksum(key, value)) found = std::move(value);
        else ++n_damaged_;
    }
    sqlite3_reset(look);
    return found;
}

void OptionStore::put(const std::string& key, const std::string& value)
{
    sqlite3_stmt* insert = handles_->insert.get();
    sqlite3_reset(insert);
    bind_bytes(insert, 1, key);
    bind_bytes(insert, 2, value);
    bind_bytes(insert, 3, checksum(key, value));
    const int status = sqlite3_step(insert);
    if (status != SQLITE_DONE) fail(handles_->database.get());
    sqlite3_reset(insert);
}

std::uint64_t OptionStore::for_each(const std::function<void(const std::string& key, const std::string& value)>& look)
{
    const Statement rows = prepared(handles_->database.get(), "SELECT key, value, checksum FROM outcome ORDER BY key");
    std::uint64_t damaged = 0;
    int status = sqlite3_step(rows.get());
    for (; status == SQLITE_ROW; status = sqlite3_step(rows.get()))
    {
        const std::string key = bytes_of(rows.get(), 0), value = bytes_of(rows.get(), 1);
        if (bytes_of(rows.get(), 2) == checksum(key, value)) look(key, value);
        else ++damaged;
    }
    if (status != SQLITE_DONE) fail(handles_->database.get());
    return damaged;
}

std::uint64_t OptionStore::n_rows()
{
    return static_cast<std::uint64_t>(number_of(handles_->database.get(), "SELECT count(*) FROM outcome"));
}

Merged merge(OptionStore& from, OptionStore& into)
{
    Merged merged;
    merged.damaged = from.for_each(
        [&](const std::string& key, const std::string& value)
        {
            if (into.value(key))
            {
                ++merged.known;
                return;
            }
            into.put(key, value);
            ++merged.taken;
        });
    return merged;
}

}  // namespace splicewright
