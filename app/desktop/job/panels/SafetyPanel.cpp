// The safety card of the visit: the cautions, six voltages, four confirmations. The readings are
// judged while they are typed, so that a hazard stops the hand before anything is recorded.

#include "app/desktop/Theme.h"
#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/VisitState.h"
#include "app/desktop/job/panels/Panels.h"
#include "app/desktop/widgets/FieldGrid.h"
#include "core/safety/Cautions.h"

#include <QLabel>
#include <QVBoxLayout>

namespace loopwright {

namespace {

QString volts(const LimitSet &limits, const char *key)
{
    return QString("%1 V").arg(limits.value(key));
}

std::vector<FieldSpec> cardAsks(const LimitSet &limits)
{
    std::vector<FieldSpec> list;
    list.push_back({"office_connected",
                    StationPanel::tr("Is the office connected to the pair?"),
                    {},
                    Answer::YesNo,
                    {},
                    0});
    const QString ac = StationPanel::tr("V ac; above %1: stop").arg(volts(limits, "hazard_ac_v"));
    const QString dc = StationPanel::tr("V dc; above %1 (office connected: %2): stop")
                           .arg(volts(limits, "hazard_dc_v_office_disconnected"),
                                volts(limits, "hazard_dc_v_office_connected"));
    for (const auto &[kind, name, hint] : {std::tuple("ac_v", StationPanel::tr("AC"), ac),
                                           std::tuple("dc_v", StationPanel::tr("DC"), dc)})
        for (const auto &[pair, word] : EnumCodes<WirePair>::table)
            list.push_back({QString("%1.%2").arg(kind, word),
                            name + ", " + wirePairName(pair),
                            hint,
                            Answer::Number,
                            {},
                            1,
                            {},
                            {},
                            pair == WirePair::TipGround});
    for (const auto &[key, word] : EnumCodes<CardKey>::table)
        list.push_back({QString("confirmed.%1").arg(word),
                        cardSentence(key),
                        {},
                        Answer::YesNo,
                        {{u'Y', "true", StationPanel::tr("Yes, confirmed")},
                         {u'N', "false", StationPanel::tr("No")}},
                        0});
    return list;
}

FactObjects facts(const QJsonObject &values)
{
    QJsonObject fact = values;
    fact.insert("kind", "safety");
    if (values.contains("confirmed")) {
        QJsonArray confirmed;
        const QJsonObject answers = values.value("confirmed").toObject();
        for (const QString &key : allWords<CardKey>())
            if (answers.value(key).toBool())
                confirmed << key;
        fact.insert("confirmed", confirmed);
    }
    return {fact};
}

class SafetyPanel : public StationPanel
{
public:
    SafetyPanel(const PanelInfo &info, JobSession &desk)
        : StationPanel(info, desk)
        , m_form(makeFactForm(desk, key(), tr("Record the card"), cardAsks(desk.limits()),
                              {facts, {}, [this](const QJsonObject &) { return marks(); }}))
        , m_alarm(new QLabel)
    {
        body()->addWidget(cautionsBlock());
        body()->addWidget(m_alarm);
        body()->addWidget(m_form);
        m_alarm->setObjectName(key() + ".alarm");
        m_alarm->setWordWrap(true);
        m_alarm->setAutoFillBackground(true);
        m_alarm->setBackgroundRole(QPalette::Window); // else the panel's white, and black on it
        m_alarm->setForegroundRole(QPalette::WindowText);
        m_alarm->hide();
        whenThemed(m_alarm, [this] { dressAlarm(); });
        connect(m_form, &Form::edited, this, [this] { judgeTyped(); });
        correctIn(m_form, [](const Fact &fact) { return fact.as<SafetyFact>() != nullptr; });
        connect(m_form, &Form::confirmed, this, &StationPanel::recorded);
        judgeTyped();
    }

    QWidget *entry(const QString &) const override { return m_form->firstEmpty(); }

private:
    QWidget *cautionsBlock() const
    {
        auto *block = new QWidget;
        auto *grid = new FieldGrid(22, block);
        for (const Caution &caution : cautions()) {
            auto *text = new QLabel(QString("<b>%1.</b> %2")
                                        .arg(QString::fromUtf8(caution.title).toHtmlEscaped(),
                                             QString::fromUtf8(caution.text).toHtmlEscaped()));
            text->setWordWrap(true);
            text->setAlignment(Qt::AlignTop);
            text->setToolTip(QString::fromUtf8(caution.lookUp));
            grid->add(text);
        }
        auto *disclaimer = new QLabel(cautionsDisclaimer());
        disclaimer->setWordWrap(true);
        disclaimer->setForegroundRole(QPalette::PlaceholderText);
        grid->add(disclaimer, 0);
        return block;
    }

    void dressAlarm()
    {
        QPalette palette = m_alarm->palette();
        palette.setColor(QPalette::Window, colours().badGround);
        palette.setColor(QPalette::WindowText, colours().bad);
        m_alarm->setPalette(palette);
        m_alarm->setFont(sized(1.25, QFont::Bold));
        m_alarm->setContentsMargins(em(0.8), em(0.6), em(0.8), em(0.6));
    }

    /// What can be read of the card so far: a slip in one field must not hide a hazard in another.
    SafetyFact typedSoFar() const
    {
        SafetyFact fact;
        const QJsonObject values = m_form->values();
        const QJsonValue office = values.value("office_connected");
        if (office.isBool())
            fact.officeConnected = office.toBool();
        const auto volts = [&values](const QString &kind) {
            const QJsonObject typed = values.value(kind).toObject();
            const auto at = [&typed](WirePair pair) {
                const QJsonValue value = typed.value(toText(pair));
                return value.isDouble() ? std::optional(value.toDouble()) : std::nullopt;
            };
            return Voltages{at(WirePair::TipGround), at(WirePair::RingGround),
                            at(WirePair::TipRing)};
        };
        fact.acV = volts("ac_v");
        fact.dcV = volts("dc_v");
        return fact;
    }

    /// The reason at the field that the hand is at.
    Findings marks() const
    {
        Findings findings;
        for (const VoltageFinding &hazard : judge(typedSoFar(), desk().limits()).hazards)
            findings.push_back(
                {Severity::Error,
                 "hazard",
                 tr("HAZARD. %1").arg(hazard.reason),
                 {},
                 QString("%1.%2").arg(hazard.alternating ? "ac_v" : "dc_v", toText(hazard.pair)),
                 0});
        return findings;
    }

    /// The alarm above the card.
    void judgeTyped()
    {
        QStringList alarms;
        for (const VoltageFinding &hazard : judge(typedSoFar(), desk().limits()).hazards)
            alarms << tr("HAZARD. %1. %2").arg(hazard.reason, hazard.toDo);
        alarms.removeDuplicates();
        m_alarm->setText(alarms.join(u'\n'));
        m_alarm->setAccessibleName(m_alarm->text());
        m_alarm->setVisible(!alarms.isEmpty());
    }

    Form *m_form;
    QLabel *m_alarm;
};

} // namespace

StationPanel *makeSafetyPanel(const PanelInfo &info, JobSession &desk)
{
    return new SafetyPanel(info, desk);
}

} // namespace loopwright
