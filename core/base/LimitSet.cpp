#include "core/base/LimitSet.h"

namespace loopwright {

const QStringList &requiredLimitKeys()
{
    static const QStringList keys{
        // error-rate run and detector check
        "run_seconds_min",
        "run_ber_max",
        "run_esr_max",
        "run_ses_max",
        "run_sync_losses_max",
        "run_confidence",
        "detector_quiet_seconds_min",
        "readback_required",
        // basic-rate loop
        "bri_resistance_max",
        "bri_loss_max",
        "bri_loss_frequency",
        "bri_termination",
        "bri_length_with_taps_max",
        "bri_tap_total_max",
        "bri_load_coils_max",
        "loop_model_error_relative",
        "loop_model_error_absolute",
        // serving area and resistance design
        "csa_length_26_max",
        "csa_length_24_max",
        "csa_tap_total_max",
        "csa_tap_single_max",
        "csa_gauge_changes_max",
        "rd_resistance_max",
        "rd_unloaded_length_max",
        "rrd_resistance_max",
        "rrd_long_resistance_max",
        "rrd_unloaded_length_max",
        "rrd_long_length_max",
        "rrd_tap_total_max",
        "rrd_end_section_min",
        "rrd_end_section_max",
        "voice_coil_spacing_error_max",
        "loop_resistance_error_relative",
        "loop_resistance_error_absolute",
        // safety
        "hazard_ac_v",
        "hazard_dc_v_office_disconnected",
        "hazard_dc_v_office_connected",
        // analog quantities: the bounds of good and of marginal
        "loop_current_good_min",
        "loop_current_marginal_min",
        "loop_current_good_max",
        "loop_current_marginal_max",
        "loss_1004_good_max",
        "loss_1004_marginal_max",
        "noise_good_below",
        "noise_marginal_max",
        "power_influence_good_max",
        "power_influence_marginal_max",
        "balance_good_min",
        "balance_marginal_min",
        "slope_good_max",
        "slope_marginal_max",
        "insulation_good_min",
        "insulation_marginal_min",
        "foreign_voltage_good_below",
        "foreign_voltage_marginal_max",
        "on_hook_voltage_good_min",
        "on_hook_voltage_good_max",
        "on_hook_voltage_marginal_min",
        "ringing_voltage_good_min",
        "ringing_voltage_marginal_min",
    };
    return keys;
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
        const Limit limit{item.text("key", 60), item.number("value", -1e12, 1e12),
                          item.text("unit", 20), item.text("name"), item.text("source", 400)};
        if (set.m_limits.contains(limit.key))
            item.fail("key", QString("\"%1\" stands there twice").arg(limit.key));
        item.done();
        set.m_limits.insert(limit.key, limit);
    }
    for (const QString &key : requiredLimitKeys())
        if (!set.m_limits.contains(key))
            reader.fail("limits", QString("lacks \"%1\"").arg(key));
    if (!reader.failed() && (set.value("run_confidence") <= 0 || set.value("run_confidence") >= 1))
        reader.fail("limits", "has a \"run_confidence\" that is not between 0 and 1");
    reader.done();
    LOOPWRIGHT_TRY(reader.result());
    return set;
}

QJsonObject LimitSet::toJson() const
{
    QJsonArray limits;
    for (const Limit &limit : m_limits)
        limits << QJsonObject{{"key", limit.key},
                              {"value", limit.value},
                              {"unit", limit.unit},
                              {"name", limit.name},
                              {"source", limit.source}};
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
