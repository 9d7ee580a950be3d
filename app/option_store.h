// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "cases/problem.h"

namespace splicewright
{

struct StoreLimits
{
    std::uint64_t most_pages = 0;  // of 4 KiB; 0: as many as the disk holds
};

// What has been computed, by the hash of what it was computed from: one file (SQLite) that grows row by row.
// Every row carries a checksum and counts only while that agrees. A row that was put is there when the process is
// killed right after. One process at a time: the lock ends with the process.
class OptionStore
{
public:
    // Makes the file when there is none. A problem when another process holds it (its id is told), or when the file is
    // none of ours.
    static Result<std::shared_ptr<OptionStore>> opened(const std::filesystem::path& file, StoreLimits limits = {});
    ~OptionStore();
    OptionStore(const OptionStore&) = delete;
    OptionStore& operator=(const OptionStore&) = delete;

    // Nothing when the row is absent or damaged; a damaged one is counted.
    [[nodiscard]] std::optional<std::string> value(const std::string& key);
    // Throws CannotCompute when the disk refuses; what was put before is kept.
    void put(const std::string& key, const std::string& value);
    // Every sound row, in the order of the keys; returns how many were damaged.
    std::uint64_t for_each(const std::function<void(const std::string& key, const std::string& value)>& look);
    [[nodiscard]] std::uint64_t n_rows();
    [[nodiscard]] std::uint64_t n_damaged() const { return n_damaged_; }

private:
    struct Handles;
    explicit OptionStore(std::unique_ptr<Handles> handles);
    std::unique_ptr<Handles> handles_;
    std::uint64_t n_damaged_ = 0;
};

struct Merged
{
    std::uint64_t taken = 0, known = 0, damaged = 0;  // rows: new in the target, there already, left out
};

// Copies every sound row of `from` that `into` does not have.
Merged merge(OptionStore& from, OptionStore& into);

}  // namespace splicewright
