// What stands above the entries of some parts, and how the parts that are only offers stand.

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/PremisesText.h"
#include "app/desktop/job/panels/Panels.h"
#include "app/desktop/widgets/FieldGrid.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignList.h"
#include "core/acceptance/LoopState.h"
#include "core/safety/Cautions.h"

#include <QVBoxLayout>

namespace loopwright {

namespace {

/// A line that says something of the order as it stands, and is hidden where it says nothing.
class SpokenLine : public SignLine
{
public:
    SpokenLine(JobSession &desk, std::function<std::pair<Status, QString>()> says)
        : m_says(std::move(says))
    {
        connect(&desk, &JobSession::changed, this, [this] { say(); });
        say();
    }

private:
    void say()
    {
        const auto [sign, text] = m_says();
        show(sign, text);
        setVisible(!text.isEmpty());
    }

    std::function<std::pair<Status, QString>()> m_says;
};

} // namespace

QWidget *linesHere(JobSession &desk, const QString &panel)
{
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(makeHeading(StationPanel::tr("Also at these premises")));
    auto *lines = new SignList(panel + ".lines", StationPanel::tr("Also at these premises"));
    lines->setLinks(true);
    column->addWidget(lines);
    QObject::connect(lines, &SignList::opened, lines,
                     [&desk](const QString &number) { emit desk.jobWished(number); });
    const auto show = [page, lines, &desk] {
        std::vector<SignItem> items;
        for (const BoardRow &row : desk.view().alsoHere)
            items.push_back({row.order, outcomeSign(row.outcome), row.order, lineText(row)});
        page->setVisible(!items.empty());
        lines->setItems(std::move(items));
    };
    QObject::connect(&desk, &JobSession::changed, page, show);
    show();
    return page;
}

QWidget *cautionsBlock(JobSession &, const QString &)
{
    auto *block = new QWidget;
    auto *grid = new FieldGrid(22, block);
    for (const Caution &caution : cautions()) {
        auto *text =
            new QLabel(QString("<b>%1.</b> %2")
                           .arg(localizedWord(QString::fromUtf8(caution.title)).toHtmlEscaped(),
                                localizedWord(QString::fromUtf8(caution.text)).toHtmlEscaped()));
        text->setWordWrap(true);
        text->setAlignment(Qt::AlignTop);
        text->setToolTip(localizedSentence(QString::fromUtf8(caution.lookUp)));
        grid->add(text);
    }
    grid->add(makeMuted(localizedWord(cautionsDisclaimer())), 0);
    return block;
}

QWidget *pairCompared(JobSession &desk, const QString &)
{
    return new SpokenLine(desk, [&desk]() -> std::pair<Status, QString> {
        const LoopState loop = loopState(desk.view().input, desk.limits());
        if (!loop.makeup || (!loop.measured.dcResistanceOhm && loop.measured.losses.empty()))
            return {Status::None, {}};
        const LoopComparison compared = compareLoop(*loop.makeup, loop.measured, desk.limits());
        return {compared.agrees ? Status::Done : Status::Doubtful,
                StationPanel::tr("Against the make-up on record: %1").arg(localized(compared.why))};
    });
}

QWidget *voicePredicted(JobSession &desk, const QString &)
{
    return new SpokenLine(desk, [&desk]() -> std::pair<Status, QString> {
        const LoopState loop = loopState(desk.view().input, desk.limits());
        if (!loop.makeup)
            return {Status::None, {}};
        const AnalogPrediction predicted = predictAnalog(*loop.makeup);
        return {Status::Note,
                StationPanel::tr("Predicted from the make-up: loop current %1 mA, loss %2 dB at "
                                 "1004 Hz, slope %3 dB.")
                    .arg(localizedFigure(predicted.loopCurrentMa, 1),
                         localizedFigure(predicted.loss1004Db, 1),
                         localizedFigure(predicted.slopeDb, 1))};
    });
}

std::pair<Status, QString> visitStanding(JobSession &desk)
{
    const auto visit = desk.visit();
    if (!visit && desk.view().status != OrderStatus::Open)
        return {Status::None, {}};
    if (!visit)
        return {Status::Open,
                desk.view().alsoHere.empty()
                    ? StationPanel::tr("Say when you arrive: every entry of today then belongs to "
                                       "this visit. Without it the calendar day is the visit.")
                    : StationPanel::tr("Say when you arrive: every entry of today then belongs to "
                                       "this visit, for every line at these premises. Without it "
                                       "the calendar day is the visit.")};
    const QString since = visit->arrived.localClock();
    return {Status::Done,
            visit->orders.contains(desk.order().number)
                ? StationPanel::tr("On site since %1.").arg(since)
                : StationPanel::tr("On site since %1, by the arrival in order %2: one visit of all "
                                   "lines at these premises. The safety card is this pair's own.")
                      .arg(since, visit->orders.front())};
}

std::pair<Status, QString> leavingStanding(JobSession &desk)
{
    const auto visit = desk.visit();
    if (!visit)
        return {Status::None, StationPanel::tr("No visit is going on.")};
    const QString text = StationPanel::tr("On site since %1. Say how the visit went when you "
                                          "leave; a visit without result counts too.")
                             .arg(visit->arrived.localClock());
    QStringList others;
    for (const BoardRow &row : desk.view().alsoHere)
        if (row.stage < stageAt(Station::Certificate))
            others
                << StationPanel::tr("%1 at %2").arg(row.order, localizedWord(stageName(row.stage)));
    return {Status::Open, others.isEmpty()
                              ? text
                              : text + ' ' +
                                    StationPanel::tr("It ends for every line here; still open: %1.")
                                        .arg(others.join(", "))};
}

} // namespace loopwright
