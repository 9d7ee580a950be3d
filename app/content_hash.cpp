// SPDX-License-Identifier: GPL-2.0-or-later
#include "app/content_hash.h"

#include <fmt/format.h>
#include <nettle/sha2.h>

#include <array>

namespace splicewright
{

std::string content_hash(std::string_view bytes)
{
    sha256_ctx context;
    sha256_init(&context);
    std::array<unsigned char, SHA256_DIGEST_SIZE> digest{};
    // Nettle takes bytes without sign; the bits are the same.
    sha256_update(&context, bytes.size(), reinterpret_cast<const unsigned char*>(bytes.data()));
    sha256_digest(&context, digest.size(), digest.data());
    return {digest.begin(), digest.end()};
}

std::string joint_hash(const std::vector<std::string>& parts)
{
    std::string framed;
    for (const std::string& part : parts) framed += fmt::format("{}:{}", part.size(), part);
    return content_hash(std::string_view(framed));
}

std::string in_hexadecimal(std::string_view bytes)
{
    std::string text;
    for (const char byte : bytes) text += fmt::format("{:02x}", static_cast<unsigned char>(byte));
    return text;
}

}  // namespace splicewright
