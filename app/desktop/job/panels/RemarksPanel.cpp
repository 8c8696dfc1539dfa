// What belongs to no single measurement: the instrument's self-test, that something was changed on
// the line, a note. A change retires the evidence that it makes old; after a failed run it says
// what was done.

#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/panels/Panels.h"

#include <QVBoxLayout>

namespace loopwright {

namespace {

FactObjects ofKind(const char *kind, const QJsonObject &values)
{
    if (values.isEmpty())
        return {};
    QJsonObject fact = values;
    fact.insert("kind", kind);
    return {fact};
}

class RemarksPanel : public StationPanel
{
public:
    RemarksPanel(const PanelInfo &info, JobSession &desk)
        : StationPanel(info, desk)
    {
        m_first = add(
            "self_test", tr("Record the self-test"),
            {{"outcome",
              tr("Self-test of the instrument"),
              tr("a failed one takes what the instrument measured afterwards out of the evidence"),
              Answer::Choice,
              {{u'P', toText(SelfTestOutcome::Passed), tr("Passed")},
               {u'F', toText(SelfTestOutcome::Failed), tr("Failed")}},
              1}});
        add("changed", tr("Record the change"),
            {{"what",
              tr("Something on the line was changed"),
              tr("retires the evidence that it makes old"),
              Answer::Choice,
              {{u'P', toText(ChangedWhat::Pair), tr("Pair")},
               {u'L', toText(ChangedWhat::LineEquipment), tr("Line equipment")},
               {u'N', toText(ChangedWhat::Nt), tr("NT")},
               {u'I', toText(ChangedWhat::Identifiers), tr("Identifiers")}},
              0},
             {"text", tr("What was done"), {}, Answer::Text, {}, 2}});
        add("note", tr("Record the note"),
            {{"text",
              tr("Note"),
              tr("for the record; never on the certificate"),
              Answer::Text,
              {},
              2}});
    }

    QWidget *entry(const QString &) const override { return m_first->firstEmpty(); }

private:
    Form *add(const char *kind, const QString &button, const std::vector<FieldSpec> &asks)
    {
        auto *form =
            makeFactForm(desk(), key() + '.' + kind, button, asks,
                         {[kind](const QJsonObject &values) { return ofKind(kind, values); }},
                         FormShape::Line, 16);
        body()->addWidget(form);
        correctIn(form, [kind](const Fact &fact) {
            return toText(fact.kind()) == QLatin1StringView(kind);
        });
        connect(form, &Form::confirmed, this, &StationPanel::recorded);
        return form;
    }

    Form *m_first = nullptr;
};

} // namespace

StationPanel *makeRemarksPanel(const PanelInfo &info, JobSession &desk)
{
    return new RemarksPanel(info, desk);
}

} // namespace loopwright
