#include "core/base/LimitSet.h"

#include <algorithm>
#include <span>
#include <utility>

namespace loopwright {

namespace {

const QString commonPractice = QStringLiteral("common practice");

/// A limit that a set has or may have, in its unit.
struct KnownLimit
{
    const char *key;
    const char *unit;
    double smallest = 0;
    double largest = 1e12;
};
/// What every set has.
constexpr KnownLimit requiredLimits[] = {
    // error-rate run and detector check
    {"run_seconds_min", "s", 1},
    {"run_ber_max", "", 0, 1},
    {"run_esr_max", "", 0, 1},
    {"run_ses_max", "s"},
    {"run_sync_losses_max", ""},
    {"run_slips_max", ""},
    {"run_confidence", "", 0, 1},
    {"detector_quiet_seconds_min", "s"},
    {"readback_required", "", 0, 1},
    // basic-rate loop
    {"bri_resistance_max", "ohm"},
    {"bri_loss_max", "dB"},
    {"bri_loss_frequency", "Hz", 20, 1e7},
    {"bri_termination", "ohm", 1, 1e6},
    {"bri_length_with_taps_max", "ft"},
    {"bri_tap_total_max", "ft"},
    {"bri_load_coils_max", ""},
    {"loop_model_error_relative", "", 0, 1},
    {"loop_model_error_absolute", "dB"},
    // serving area and resistance design
    {"csa_length_26_max", "ft"},
    {"csa_length_24_max", "ft"},
    {"csa_tap_total_max", "ft"},
    {"csa_tap_single_max", "ft"},
    {"csa_gauge_changes_max", ""},
    {"rd_resistance_max", "ohm"},
    {"rd_unloaded_length_max", "ft"},
    {"rrd_resistance_max", "ohm"},
    {"rrd_long_resistance_max", "ohm"},
    {"rrd_unloaded_length_max", "ft"},
    {"rrd_long_length_max", "ft"},
    {"rrd_tap_total_max", "ft"},
    {"rrd_end_section_min", "ft"},
    {"rrd_end_section_max", "ft"},
    {"voice_coil_spacing_error_max", "", 0, 1},
    {"loop_hottest_f", "degF", -60, 200},
    {"loop_resistance_error_relative", "", 0, 1},
    {"loop_resistance_error_absolute", "ohm"},
    // safety
    {"hazard_ac_v", "V"},
    {"hazard_ac_wet_v", "V"},
    {"hazard_dc_v", "V"},
    {"foreign_battery_dc_v", "V"},
    // analog quantities: the bounds of good and of marginal
    {"loop_current_good_min", "mA"},
    {"loop_current_marginal_min", "mA"},
    {"loop_current_good_max", "mA"},
    {"loop_current_marginal_max", "mA"},
    {"loss_1004_good_max", "dB"},
    {"loss_1004_marginal_max", "dB"},
    {"noise_good_below", "dBrnC"},
    {"noise_marginal_max", "dBrnC"},
    {"power_influence_good_max", "dBrnC"},
    {"power_influence_marginal_max", "dBrnC"},
    {"balance_good_min", "dB"},
    {"balance_marginal_min", "dB"},
    {"slope_good_max", "dB"},
    {"slope_marginal_max", "dB"},
    {"insulation_good_min", "ohm"},
    {"insulation_marginal_min", "ohm"},
    {"foreign_voltage_good_below", "V"},
    {"foreign_voltage_marginal_max", "V"},
    {"on_hook_voltage_good_min", "V"},
    {"on_hook_voltage_good_max", "V"},
    {"on_hook_voltage_marginal_min", "V"},
    {"ringing_voltage_good_min", "V"},
    {"ringing_voltage_marginal_min", "V"},
};

/// What a set may have besides: how sure the office's instruments are, printed with each reading.
constexpr KnownLimit optionalLimits[] = {
    {"uncertainty_resistance", "ohm"},    {"uncertainty_loss", "dB"},
    {"uncertainty_voltage", "V"},         {"uncertainty_count", ""},
    {"uncertainty_loop_current", "mA"},   {"uncertainty_loss_1004", "dB"},
    {"uncertainty_noise", "dBrnC"},       {"uncertainty_power_influence", "dBrnC"},
    {"uncertainty_balance", "dB"},        {"uncertainty_slope", "dB"},
    {"uncertainty_insulation", "ohm"},    {"uncertainty_foreign_voltage", "V"},
    {"uncertainty_on_hook_voltage", "V"}, {"uncertainty_ringing_voltage", "V"},
};

/// The first must not be above the second.
constexpr std::pair<const char *, const char *> inOrder[] = {
    {"loop_current_marginal_min", "loop_current_good_min"},
    {"loop_current_good_min", "loop_current_good_max"},
    {"loop_current_good_max", "loop_current_marginal_max"},
    {"loss_1004_good_max", "loss_1004_marginal_max"},
    {"noise_good_below", "noise_marginal_max"},
    {"power_influence_good_max", "power_influence_marginal_max"},
    {"balance_marginal_min", "balance_good_min"},
    {"slope_good_max", "slope_marginal_max"},
    {"insulation_marginal_min", "insulation_good_min"},
    {"foreign_voltage_good_below", "foreign_voltage_marginal_max"},
    {"on_hook_voltage_marginal_min", "on_hook_voltage_good_min"},
    {"on_hook_voltage_good_min", "on_hook_voltage_good_max"},
    {"ringing_voltage_marginal_min", "ringing_voltage_good_min"},
    {"rrd_end_section_min", "rrd_end_section_max"},
};

const KnownLimit *knownLimit(const QString &key)
{
    for (const std::span<const KnownLimit> list :
         {std::span<const KnownLimit>(requiredLimits), std::span<const KnownLimit>(optionalLimits)})
        for (const KnownLimit &one : list)
            if (key == QLatin1StringView(one.key))
                return &one;
    return nullptr;
}

void checkKnown(const Limit &limit, JsonReader &item)
{
    const KnownLimit *known = knownLimit(limit.key);
    if (item.failed())
        return;
    if (!known)
        item.fail("key",
                  QString("\"%1\" is no limit that anything is held against").arg(limit.key));
    else if (limit.unit != QLatin1StringView(known->unit))
        item.fail(
            "unit",
            *known->unit
                ? QString("of \"%1\" must be \"%2\"").arg(limit.key, QLatin1StringView(known->unit))
                : QString("of \"%1\" must be empty: it is a pure number").arg(limit.key));
    else if (limit.value < known->smallest || limit.value > known->largest)
        item.fail("value", QString("of \"%1\" must be from %2 to %3")
                               .arg(limit.key)
                               .arg(known->smallest)
                               .arg(known->largest));
}

void checkTogether(const LimitSet &set, JsonReader &reader)
{
    for (const KnownLimit &limit : requiredLimits)
        if (!set.has(limit.key))
            reader.fail("limits", QString("lacks \"%1\"").arg(QLatin1StringView(limit.key)));
    if (reader.failed())
        return;
    if (set.value("run_confidence") <= 0 || set.value("run_confidence") >= 1)
        reader.fail("limits", "has a \"run_confidence\" that is not between 0 and 1");
    for (const auto &[low, high] : inOrder)
        if (set.value(low) > set.value(high))
            reader.fail("limits", QString("has a \"%1\" above its \"%2\"")
                                      .arg(QLatin1StringView(low), QLatin1StringView(high)));
}

} // namespace

QString Limit::sourceFor(double figure) const
{
    if (sourceBeyond.isEmpty() || figure == value)
        return source;
    return source.isEmpty() || source == commonPractice ? sourceBeyond
                                                        : source + " and " + sourceBeyond;
}

bool Limit::namesPublished() const
{
    return !sourceBeyond.isEmpty() || (!source.isEmpty() && !source.startsWith(commonPractice));
}

Result<void> LimitSet::checkSources(const LimitSet &published) const
{
    for (const Limit &limit : m_limits) {
        const auto found = published.m_limits.constFind(limit.key);
        if (found == published.m_limits.constEnd() || found->value == limit.value ||
            !found->namesPublished())
            continue;
        const bool same = limit.source == found->source && limit.namesPublished();
        const bool beyond =
            !limit.sourceBeyond.isEmpty() && limit.sourceBeyond == found->sourceBeyond;
        if (same || beyond)
            return failure(ErrorCode::BadInput,
                           QString("is %1 and still names \"%2\", which has %3: name the source of "
                                   "%1 as its \"%4\", or leave it empty")
                               .arg(limit.value)
                               .arg(beyond ? limit.sourceBeyond : limit.source)
                               .arg(found->value)
                               .arg(beyond ? "source_beyond" : "source"),
                           limit.key);
    }
    return {};
}

Result<LimitSet> LimitSet::fromJson(const QJsonObject &object, const QString &place)
{
    JsonReader reader(object, place);
    LimitSet set;
    set.m_version = reader.text("version", 40);
    const QString validFrom = reader.text("valid_from", 10);
    set.m_validFrom = QDate::fromString(validFrom, "yyyy-MM-dd");
    if (!reader.failed() && (!set.m_validFrom.isValid() || set.m_version.isEmpty()))
        reader.fail("valid_from", "must be a day as YYYY-MM-DD, and the version must not be empty");
    const QJsonArray limits = reader.array("limits", 1000);
    for (int i = 0; i < limits.size() && !reader.failed(); ++i) {
        JsonReader item = reader.item("limits", i, limits[i]);
        const Limit limit{
            item.text("key", 60),     item.number("value", -1e12, 1e12),
            item.text("unit", 20),    item.text("name"),
            item.text("source", 400), item.optionalText("source_beyond", 400).value_or(QString())};
        if (set.m_limits.contains(limit.key))
            item.fail("key", QString("\"%1\" stands there twice").arg(limit.key));
        checkKnown(limit, item);
        item.done();
        set.m_limits.insert(limit.key, limit);
    }
    checkTogether(set, reader);
    reader.done();
    LOOPWRIGHT_TRY(reader.result());
    return set;
}

QJsonObject LimitSet::toJson() const
{
    QJsonArray limits;
    for (const Limit &limit : m_limits) {
        QJsonObject object{{"key", limit.key},
                           {"value", limit.value},
                           {"unit", limit.unit},
                           {"name", limit.name},
                           {"source", limit.source}};
        if (!limit.sourceBeyond.isEmpty())
            object.insert("source_beyond", limit.sourceBeyond);
        limits << object;
    }
    return {{"version", m_version},
            {"valid_from", m_validFrom.toString("yyyy-MM-dd")},
            {"limits", limits}};
}

const Limit &LimitSet::limit(const QString &key) const
{
    const auto found = m_limits.constFind(key);
    Q_ASSERT(found != m_limits.constEnd());
    return *found;
}

} // namespace loopwright
