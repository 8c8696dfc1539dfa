#pragma once
// Chain matrices at one frequency, and the walk over them from the customer to the office. In the
// header, because it is the innermost loop of everything that speaks of loss.

#include "core/loop/LineConstants.h"

#include <cmath>

namespace loopwright {

/// The product of std::complex looks for infinities that cannot arise here.
inline std::complex<double> product(const std::complex<double> &a, const std::complex<double> &b)
{
    return {a.real() * b.real() - a.imag() * b.imag(), a.real() * b.imag() + a.imag() * b.real()};
}

/// [A B; C A] times exp(log): every element of a loop is the same from both sides, so D is A.
struct ChainMatrix
{
    std::complex<double> a{1, 0};
    std::complex<double> b{0, 0};
    std::complex<double> c{0, 0};
    std::complex<double> log{0, 0};

    /// A = D = cosh, B = Z0 sinh, C = sinh / Z0 of gamma l, with exp(gamma l) taken out in front,
    /// so that no length overflows.
    static ChainMatrix section(const Propagation &cable, double kilometres)
    {
        const std::complex<double> echo = roundTrip(cable, kilometres);
        const std::complex<double> sinh = 0.5 * (1.0 - echo);
        return {0.5 * (1.0 + echo), product(cable.z0, sinh), product(cable.y0, sinh),
                kilometres * cable.gamma};
    }
    /// An open stub: C = tanh(gamma l) / Z0.
    static ChainMatrix tap(const Propagation &cable, double kilometres)
    {
        const std::complex<double> echo = roundTrip(cable, kilometres);
        return {1, 0, product(cable.y0, (1.0 - echo) / (1.0 + echo)), 0};
    }
    static ChainMatrix coil(double ohms, double reactanceOhm)
    {
        return {1, {ohms, reactanceOhm}, 0, 0};
    }

private:
    /// exp(-2 gamma l): what is left of a wave that went to the end of the cable and came back.
    static std::complex<double> roundTrip(const Propagation &cable, double kilometres)
    {
        const double size = std::exp(-2 * kilometres * cable.gamma.real());
        const double angle = -2 * kilometres * cable.gamma.imag();
        return {size * std::cos(angle), size * std::sin(angle)};
    }
};

/// Voltage and current at one point of a loop, one ampere through the load.
class LoopWave
{
public:
    explicit LoopWave(double loadOhm)
        : m_voltage(loadOhm)
        , m_current(1)
    {
    }

    /// One element further towards the office.
    void pass(const ChainMatrix &element)
    {
        const std::complex<double> voltage =
            product(element.a, m_voltage) + product(element.b, m_current);
        m_current = product(element.c, m_voltage) + product(element.a, m_current);
        m_voltage = voltage;
        m_log += element.log;
        const double size = std::norm(m_voltage) + std::norm(m_current);
        if (size > 1e100) [[unlikely]] {
            m_voltage /= std::sqrt(size);
            m_current /= std::sqrt(size);
            m_log += 0.5 * std::log(size);
        }
    }

    /// Natural logarithm of (V + Zs I) / (Zs + Zl): real part loss in neper, imaginary part phase
    /// lag in radian with the turns of the sections counted in.
    std::complex<double> logInsertion(double sourceOhm, double loadOhm) const
    {
        return m_log + std::log((m_voltage + sourceOhm * m_current) / (sourceOhm + loadOhm));
    }
    /// |V + Zs I|^2, and the neper to be added to half its logarithm.
    double power(double sourceOhm) const { return std::norm(m_voltage + sourceOhm * m_current); }
    double neper() const { return m_log.real(); }

private:
    std::complex<double> m_voltage;
    std::complex<double> m_current;
    std::complex<double> m_log{0, 0}; ///< voltage and current are these times exp(log)
};

} // namespace loopwright
