// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <cstring>
#include <nlohmann/json.hpp>
#include <string>
#include <utility>
#include <vector>

namespace splicewright
{

// Reads the payload of the view as its description in post/view_payload.h tells.
class PayloadReader
{
public:
    explicit PayloadReader(std::string bytes) : bytes_(std::move(bytes))
    {
        const auto length = static_cast<std::size_t>(next<std::uint32_t>(1)[0]);
        header = nlohmann::json::parse(bytes_.substr(at_, length));
        at_ += length;
    }
    template <class Number>
    std::vector<double> next(std::size_t count, double step = 1)
    {
        std::vector<double> values;
        for (std::size_t i = 0; i < count; ++i, at_ += sizeof(Number))
        {
            Number value{};
            std::memcpy(&value, bytes_.data() + at_, sizeof(Number));
            values.push_back(step * static_cast<double>(value));
        }
        return values;
    }
    [[nodiscard]] bool is_read() const { return at_ == bytes_.size(); }
    nlohmann::json header;

private:
    std::string bytes_;
    std::size_t at_ = 0;
};

}  // namespace splicewright
