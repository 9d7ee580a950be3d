// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstddef>
#include <new>
#include <vector>

namespace splicewright
{

// Starts at a multiple of 64 bytes, the width of the longest vectors.
template <class T>
struct AlignedAllocator
{
    using value_type = T;  // NOLINT(readability-identifier-naming): the name that allocators have
    AlignedAllocator() = default;
    template <class U>
    AlignedAllocator(const AlignedAllocator<U>&)
    {
    }
    T* allocate(std::size_t n) { return static_cast<T*>(::operator new (n * sizeof(T), std::align_val_t{64})); }
    void deallocate(T* p, std::size_t) { ::operator delete (p, std::align_val_t{64}); }
    bool operator==(const AlignedAllocator&) const { return true; }
};

template <class T>
using AlignedVector = std::vector<T, AlignedAllocator<T>>;

}  // namespace splicewright
