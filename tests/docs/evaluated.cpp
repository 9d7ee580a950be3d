// SPDX-License-Identifier: GPL-2.0-or-later
#include "tests/docs/evaluated.h"

#include <cctype>
#include <cmath>
#include <cstdlib>
#include <numbers>
#include <stdexcept>
#include <vector>

namespace splicewright
{
namespace
{

// Recursive descent: sum of products of powers.
class Reader
{
public:
    explicit Reader(const std::string& text) : text_(text) {}

    double whole()
    {
        const double value = sum();
        if (peek() != '\0') fail();
        return value;
    }

private:
    double sum()
    {
        double value = product();
        for (;;)
            if (take('+')) value += product();
            else if (take('-')) value -= product();
            else return value;
    }

    double product()
    {
        double value = power();
        for (;;)
            if (take('*')) value *= power();
            else if (take('/')) value /= power();
            else return value;
    }

    double power()
    {
        const double base = atom();
        return take('^') ? std::pow(base, power()) : base;
    }

    double atom()
    {
        if (take('-')) return -power();
        if (take('('))
        {
            const double value = sum();
            expect(')');
            return value;
        }
        if (std::isalpha(static_cast<unsigned char>(peek())) != 0) return named();
        char* end = nullptr;
        const double value = std::strtod(text_.c_str() + at_, &end);
        const auto next = static_cast<std::size_t>(end - text_.c_str());
        if (next == at_) fail();
        at_ = next;
        return value;
    }

    double named()
    {
        std::string name;
        while (std::isalnum(static_cast<unsigned char>(peek())) != 0) name += text_[at_++];
        if (name == "pi") return std::numbers::pi;
        expect('(');
        std::vector<double> arguments{sum()};
        while (take(',')) arguments.push_back(sum());
        expect(')');
        if (name == "sqrt" && arguments.size() == 1) return std::sqrt(arguments[0]);
        if (name == "log10" && arguments.size() == 1) return std::log10(arguments[0]);
        if (name == "min" && arguments.size() == 2) return std::fmin(arguments[0], arguments[1]);
        if (name == "max" && arguments.size() == 2) return std::fmax(arguments[0], arguments[1]);
        fail();
    }

    char peek()
    {
        while (at_ < text_.size() && text_[at_] == ' ') ++at_;
        return at_ < text_.size() ? text_[at_] : '\0';
    }
    bool take(char wanted)
    {
        if (peek() != wanted) return false;
        ++at_;
        return true;
    }
    void expect(char wanted)
    {
        if (!take(wanted)) fail();
    }
    [[noreturn]] void fail() const
    {
        throw std::runtime_error("cannot read \"" + text_ + "\" from place " + std::to_string(at_));
    }

    std::string text_;
    std::size_t at_ = 0;
};

}  // namespace

double evaluated(const std::string& expression) { return Reader(expression).whole(); }

}  // namespace splicewright
