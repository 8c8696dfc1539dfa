#pragma once
// What a pair is made of, from the serving office towards the customer: sections of cable, bridged
// taps where they join, load coils. Every figure stays in the unit in which it was given, so that
// reading and writing a record is the identity; feet, kilometres and degrees Fahrenheit are asked
// for by function. Reading is strict: an error names its place.

#include "core/base/Csv.h"
#include "core/base/Json.h"
#include "core/base/Text.h"
#include "core/loop/Wire.h"

#include <optional>
#include <vector>

namespace loopwright {

inline constexpr double metresPerFoot = 0.3048;
inline constexpr double kilometresPerFoot = 0.3048e-3;
/// Preset for cable of 70 nF per mile, to which the published 1 kHz losses belong, nF/km.
inline constexpr double lowCapacitanceNfPerKm = 70 / 1.609344;
/// Temperature if a make-up states none.
inline constexpr double usualTemperatureF = 70;

enum class LengthUnit
{
    Foot,
    Metre,
};

struct Length
{
    double value = 0;
    LengthUnit unit = LengthUnit::Foot;

    double kilometres() const
    {
        return unit == LengthUnit::Foot ? value * kilometresPerFoot : value * 1e-3;
    }
    double feet() const { return unit == LengthUnit::Foot ? value : value / metresPerFoot; }
    QString text() const; ///< "9000 ft" or "400 m"
    bool operator==(const Length &) const = default;
};

/// A computed length, whole: "9000 ft", "2743 m".
QString lengthText(double feet, bool inMetres);

struct Temperature
{
    double value = usualTemperatureF;
    bool celsius = false;

    double fahrenheit() const { return celsius ? value * 1.8 + 32 : value; }
    QString text() const; ///< "70 °F" or "20 °C"
    bool operator==(const Temperature &) const = default;
};

enum class ElementType
{
    Section,
    BridgedTap,
    LoadCoil,
};
template<>
struct EnumCodes<ElementType>
{
    static constexpr std::pair<ElementType, const char *> table[] = {
        {ElementType::Section, "section"},
        {ElementType::BridgedTap, "bridged_tap"},
        {ElementType::LoadCoil, "load_coil"}};
};

struct LoopElement
{
    ElementType type = ElementType::Section;
    Wire wire;                                ///< section and tap
    Length length;                            ///< section and tap; above 0, to 300,000 ft
    std::optional<double> capacitanceNfPerKm; ///< section and tap; if it is stated, 10 to 200
    double millihenry = 0;                    ///< coil; above 0, to 1000
    std::optional<double> ohms;               ///< coil; if it is stated, 0 to 1000

    static LoopElement section(Wire wire, Length length);
    static LoopElement tap(Wire wire, Length length);
    static LoopElement coil(double millihenry, std::optional<double> ohms = {});

    /// Series resistance of a coil of which none is stated: 9.0 ohm at 88 mH and 7.0 ohm at 66 mH,
    /// and between and beyond them the straight line through the two (convention of this program).
    static double usualCoilOhms(double millihenry) { return 1 + millihenry / 11; }
    double coilOhms() const { return ohms ? *ohms : usualCoilOhms(millihenry); }
    Text text() const; ///< "section of 26 AWG, 9000 ft"
    bool operator==(const LoopElement &) const = default;
};

struct LoopMakeup
{
    std::optional<Temperature> temperature;
    std::optional<double> capacitanceNfPerKm; ///< of all cable whose element states none
    bool amplified = false; ///< a repeater or carrier stands in it: the wires alone predict nothing
    std::vector<LoopElement> elements;

    double temperatureF() const
    {
        return temperature ? temperature->fahrenheit() : usualTemperatureF;
    }
    /// Whether a section of it is given in metres: then what is computed of it is shown so.
    bool isMetric() const;
    double workingLengthFt() const; ///< sections, without taps
    double bridgedTapFt() const;    ///< all taps together
    int loadCoils() const;
    /// "bridged tap of 24 AWG, 1500 ft, at 4500 ft from the office", "section of 26 AWG, 9000 ft,
    /// beginning at the office".
    Text textAt(std::size_t index) const;
    /// The same make-up without the elements at these positions.
    LoopMakeup without(const std::vector<std::size_t> &positions) const;

    /// Content of a loop.json, `amplified` true or left out: at least one element, at most 200,
    /// known keys only.
    static LoopMakeup read(JsonReader &reader);
    static Result<LoopMakeup> fromJson(const QJsonObject &object, const QString &place);
    QJsonObject toJson() const;

    /// Columns element, gauge_awg, diameter_mm, length_ft, length_m, millihenry, ohms (element is
    /// required), capacitance_nf_per_km, temperature_f and temperature_c; the temperature stands in
    /// any one row. BadInput naming row and column.
    static Result<LoopMakeup> fromCsv(const QByteArray &bytes, const QString &fileName);

    bool operator==(const LoopMakeup &) const = default;
};

/// The columns of a make-up as CSV.
CsvLayout makeupLayout();

} // namespace loopwright
