// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <memory>
#include <string>

namespace splicewright
{

// An OpenGL context without a window and without a display, made with EGL on a surfaceless platform.
// As the EGL extensions EGL_MESA_platform_surfaceless and EGL_KHR_surfaceless_context describe.
class OffscreenContext
{
public:
    OffscreenContext();
    ~OffscreenContext();
    OffscreenContext(const OffscreenContext&) = delete;
    OffscreenContext& operator=(const OffscreenContext&) = delete;

    [[nodiscard]] const std::string& why_not() const { return why_not_; }  // empty when the context stands
    void make_current() const;
    [[nodiscard]] bool is_current() const;

private:
    std::string why_not_;
    void* display_ = nullptr;
    void* context_ = nullptr;
};

// A virtual X server of our own on a free display number; ends with this object.
class VirtualDisplay
{
public:
    VirtualDisplay();
    ~VirtualDisplay();
    VirtualDisplay(const VirtualDisplay&) = delete;
    VirtualDisplay& operator=(const VirtualDisplay&) = delete;

    [[nodiscard]] const std::string& why_not() const { return why_not_; }  // empty when the server stands
    [[nodiscard]] void* connection() const { return connection_; }         // X11's Display*

private:
    std::string why_not_;
    void* connection_ = nullptr;
    int process_ = -1;
};

}  // namespace splicewright
