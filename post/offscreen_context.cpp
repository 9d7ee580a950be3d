// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/offscreen_context.h"

#define EGL_NO_X11
#include <EGL/egl.h>
#include <EGL/eglext.h>

#include <array>
#include <cstring>

namespace splicewright
{
namespace
{

EGLDisplay surfaceless_display()
{
    const char* extensions = eglQueryString(EGL_NO_DISPLAY, EGL_EXTENSIONS);
    if (extensions == nullptr || std::strstr(extensions, "EGL_MESA_platform_surfaceless") == nullptr)
        return EGL_NO_DISPLAY;
    return eglGetPlatformDisplay(EGL_PLATFORM_SURFACELESS_MESA, EGL_DEFAULT_DISPLAY, nullptr);
}

EGLContext core_context(EGLDisplay display)
{
    constexpr std::array<EGLint, 5> wanted{EGL_RENDERABLE_TYPE, EGL_OPENGL_BIT, EGL_SURFACE_TYPE, 0, EGL_NONE};
    EGLConfig config = nullptr;
    EGLint n_configs = 0;
    if (eglChooseConfig(display, wanted.data(), &config, 1, &n_configs) == EGL_FALSE || n_configs < 1)
        return EGL_NO_CONTEXT;
    constexpr std::array<EGLint, 7> attributes{
        EGL_CONTEXT_MAJOR_VERSION,           3,       EGL_CONTEXT_MINOR_VERSION, 2, EGL_CONTEXT_OPENGL_PROFILE_MASK,
        EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT, EGL_NONE};
    return eglCreateContext(display, config, EGL_NO_CONTEXT, attributes.data());
}

}  // namespace

OffscreenContext::OffscreenContext()
{
    display_ = surfaceless_display();
    if (display_ == EGL_NO_DISPLAY)
    {
        why_not_ = "EGL offers no surfaceless platform (is a Mesa EGL driver installed? Debian: libegl-mesa0)";
        return;
    }
    if (eglInitialize(display_, nullptr, nullptr) == EGL_FALSE)
    {
        display_ = nullptr;
        why_not_ = "EGL's surfaceless platform does not start";
        return;
    }
    if (eglBindAPI(EGL_OPENGL_API) == EGL_TRUE) context_ = core_context(display_);
    if (context_ == EGL_NO_CONTEXT || eglMakeCurrent(display_, EGL_NO_SURFACE, EGL_NO_SURFACE, context_) == EGL_FALSE)
        why_not_ = "EGL gives no OpenGL 3.2 context";
}

OffscreenContext::~OffscreenContext()
{
    if (display_ == nullptr) return;
    eglMakeCurrent(display_, EGL_NO_SURFACE, EGL_NO_SURFACE, EGL_NO_CONTEXT);
    if (context_ != nullptr) eglDestroyContext(display_, context_);
    eglTerminate(display_);
}

void OffscreenContext::make_current() const { eglMakeCurrent(display_, EGL_NO_SURFACE, EGL_NO_SURFACE, context_); }

bool OffscreenContext::is_current() const { return eglGetCurrentContext() == context_; }

}  // namespace splicewright
