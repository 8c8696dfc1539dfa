// The make-up of the pair: the table, the drawing to scale beside it, and what it predicts, as it
// is typed. Also from a file, CSV or JSON.

#include "app/actions/InFile.h"
#include "app/desktop/Keys.h"
#include "app/desktop/Language.h"
#include "app/desktop/Lengths.h"
#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/form/Form.h"
#include "app/desktop/job/LoopPicture.h"
#include "app/desktop/job/MakeupTable.h"
#include "app/desktop/job/panels/Panels.h"
#include "app/desktop/widgets/PageElements.h"
#include "core/acceptance/LoopState.h"
#include "core/loop/DesignRules.h"
#include "core/loop/Remedies.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>

namespace loopwright {

namespace {

class MakeupEditor : public StepEditor
{
public:
    MakeupEditor(JobSession &desk, const QString &part)
        : StepEditor(desk)
        , m_part(part)
        , m_table(new MakeupTable(part))
        , m_picture(new LoopPicture(desk.limits(), desk.order().kind == LineKind::Bri))
        , m_verdict(new SignLine)
        , m_mend(new SignLine)
        , m_corrects(new SignLine)
    {
        auto *beside = new FieldGridRow(m_table, m_picture);
        auto *column = new QVBoxLayout(this);
        column->setContentsMargins(0, 0, 0, 0);
        column->addWidget(m_corrects);
        column->addWidget(beside);
        column->addWidget(m_verdict);
        column->addWidget(m_mend);
        m_button = makeButton(tr("Record the make-up"), part + ".confirm", [this] { confirm(); });
        column->addWidget(
            makeButtonRow({m_button, makeButton(tr("Take it from a file…"), part + ".file",
                                                [this] { takeFile(); })}));
        addKey(this,
               {QStringLiteral("makeup.record"),
                m_button->text(),
                {QKeySequence(Qt::CTRL | Qt::Key_Return)}},
               [this] { confirm(); });
        m_keeping.setSingleShot(true);
        m_keeping.setInterval(Form::keepAfterMs);
        connect(&m_keeping, &QTimer::timeout, this, [this] { keep(); });
        connect(m_table, &MakeupTable::edited, this, [this] {
            m_keeping.start();
            showTyped();
        });
        connect(m_table, &MakeupTable::entered, this, [this] { m_button->setFocus(); });
        connect(m_table, &MakeupTable::left, this, [this] {
            keep();
            if (!m_table->makeup().isEmpty())
                markError(false);
        });
        m_table->setTyped(desk.draft(part));
    }

    QStringList needs() const override { return {"loop.makeup"}; }
    QWidget *entry(const QString &) override { return m_table->firstEmpty(); }

    /// What was measured in the same record is kept.
    bool corrects(const Fact &fact) const override
    {
        return fact.as<LoopFact>() && fact.as<LoopFact>()->makeup;
    }

    QWidget *refill(const Fact &fact) override
    {
        m_table->setMakeup(fact.as<LoopFact>()->makeup->toJson());
        desk().setCorrects(m_part, fact, {"makeup"});
        keep();
        showTyped();
        return m_table->firstField();
    }

    void showSteps() override
    {
        m_recorded = loopState(desk().view().input, desk().limits()).makeup;
        showTyped();
    }

private:
    /// Table and drawing side by side, or one below the other where there is no room.
    class FieldGridRow : public QWidget
    {
    public:
        FieldGridRow(QWidget *left, QWidget *right)
        {
            auto *layout = new QBoxLayout(QBoxLayout::LeftToRight, this);
            layout->setContentsMargins(0, 0, 0, 0);
            layout->addWidget(left, 5, Qt::AlignTop);
            layout->addWidget(right, 6);
        }

    protected:
        void resizeEvent(QResizeEvent *event) override
        {
            static_cast<QBoxLayout *>(layout())->setDirection(
                width() < em(52) ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
            QWidget::resizeEvent(event);
        }
    };

    void keep()
    {
        m_keeping.stop();
        desk().keepDraft(m_part, m_table->typed());
    }

    FactObjects facts() const { return {{{"kind", "loop"}, {"makeup", m_table->makeup()}}}; }

    /// What is typed, or where nothing is the make-up on record. A row that cannot be read yet is
    /// left out of the drawing, so that the others stay; nothing is predicted meanwhile.
    void showTyped()
    {
        std::optional<LoopMakeup> shown = m_recorded;
        QJsonObject typed = m_table->makeup();
        bool whole = true;
        if (!typed.isEmpty())
            shown = readable(typed, whole);
        m_picture->setMakeup(shown);
        const bool corrects = !desk().corrects(m_part).isEmpty();
        m_corrects->show(Status::Note,
                         tr("Filled with what was recorded. What you record takes its "
                            "place; that one stays on record as corrected."));
        m_corrects->setVisible(corrects);
        m_verdict->setVisible(shown.has_value());
        m_mend->hide();
        if (shown && !whole)
            m_verdict->show(Status::Open, tr("Drawn without the row that is not complete yet."));
        else if (shown)
            desk().order().kind == LineKind::Analog ? predictVoice(*shown) : predictBasic(*shown);
    }

    std::optional<LoopMakeup> readable(const QJsonObject &typed, bool &whole) const
    {
        const auto all = desk().read({{{"kind", "loop"}, {"makeup", typed}}});
        whole = all.has_value();
        if (whole)
            return all->facts.front().as<LoopFact>()->makeup;
        QJsonArray elements;
        for (const QJsonValue &element : typed.value("elements").toArray())
            if (LoopMakeup::fromJson({{"elements", QJsonArray{element}}}, {}))
                elements << element;
        const auto rest = LoopMakeup::fromJson({{"elements", elements}}, {});
        return rest ? std::optional(*rest) : std::nullopt;
    }

    void predictBasic(const LoopMakeup &makeup)
    {
        const LoopQualification loop = qualify(makeup, desk().limits());
        const bool inMetres = makeup.isMetric();
        m_verdict->show(suitabilitySign(loop.verdict),
                        tr("Predicted: %1. %2 dB at %3 kHz ± %4 dB, %5 ohm; %6 and %7 of taps. %8")
                            .arg(suitabilityName(loop.verdict))
                            .arg(localizedFigure(loop.insertionLossDb, 2))
                            .arg(localizedFigure(loop.frequencyHz / 1000))
                            .arg(localizedFigure(loop.marginDb, 2))
                            .arg(loop.dcResistanceOhm, 0, 'f', 0)
                            .arg(lengthText(loop.workingLengthFt, inMetres),
                                 lengthText(loop.bridgedTapFt, inMetres))
                            .arg(withLengths(reasonSentences(loop.reasons), makeup.isMetric())));
        if (loop.verdict == Suitability::Suitable)
            return;
        const auto ways = remedies(makeup, desk().limits());
        if (ways.empty())
            return;
        m_mend->show(Status::Note, tr("What would mend it: %1 — then %2 dB, %3.")
                                       .arg(withLengths(localized(ways.front().text), inMetres))
                                       .arg(localizedFigure(ways.front().lossAfterDb, 2))
                                       .arg(suitabilityName(ways.front().verdictAfter)));
        m_mend->setVisible(true);
    }

    void predictVoice(const LoopMakeup &makeup)
    {
        const VoiceBandQualification loop = qualifyVoiceBand(makeup, desk().limits());
        m_verdict->show(suitabilitySign(loop.verdict),
                        tr("Predicted: %1. %2 dB at 1004 Hz, %3 ohm, %4 mA; load coils: %5. %6")
                            .arg(suitabilityName(loop.verdict))
                            .arg(localizedFigure(loop.loss1004Db, 2))
                            .arg(loop.dcResistanceOhm, 0, 'f', 0)
                            .arg(localizedFigure(loop.loopCurrentMa, 1))
                            .arg(loop.loadCoils)
                            .arg(withLengths(reasonSentences(loop.reasons), makeup.isMetric())));
    }

    /// Marks what the codec finds wrong; what is not filled in yet only where it is confirmed.
    bool markError(bool confirming)
    {
        const auto read = desk().read(facts());
        if (read) {
            m_table->clearMark();
            return false;
        }
        if (confirming || !read.error().message.contains("missing"))
            m_table->mark(read.error().place, localizedSentence(read.error().message));
        return true;
    }

    void confirm()
    {
        m_table->tellAnew();
        if (m_table->makeup().isEmpty()) {
            m_table->mark({}, tr("Nothing is entered yet."));
            return;
        }
        if (markError(true))
            return;
        const FactObjects made = facts();
        const QJsonObject before = m_table->typed();
        m_keeping.stop();
        m_table->clear();
        if (const auto report = desk().record(m_part, made); !report) {
            m_table->setTyped(before);
            m_table->mark(report.error().place, localizedSentence(report.error().message));
            return;
        }
        emit recorded("loop.makeup");
    }

    void takeFile()
    {
        const QString path = QFileDialog::getOpenFileName(this, tr("Make-up of the pair"), {},
                                                          tr("Make-up (*.csv *.json)"));
        if (path.isEmpty())
            return;
        const QString name = QFileInfo(path).fileName();
        const auto makeup = fromFile(path, name);
        if (!makeup) {
            m_table->mark({}, localized(makeup.error()));
            return;
        }
        m_table->setMakeup(makeup->toJson());
        keep();
        showTyped();
    }

    static Result<LoopMakeup> fromFile(const QString &path, const QString &name)
    {
        LOOPWRIGHT_ASSIGN(const auto bytes, readFile(path));
        if (name.endsWith(".csv", Qt::CaseInsensitive))
            return LoopMakeup::fromCsv(bytes, name);
        LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(bytes, name));
        return LoopMakeup::fromJson(object, name);
    }

    QString m_part;
    MakeupTable *m_table;
    QTimer m_keeping; ///< runs while something is typed that is not kept
    LoopPicture *m_picture;
    SignLine *m_verdict;
    SignLine *m_mend;
    SignLine *m_corrects;
    QPushButton *m_button = nullptr;
    std::optional<LoopMakeup> m_recorded;
};

} // namespace

std::vector<StepEditor *> makeupEditors(JobSession &desk, const QString &panel)
{
    return {new MakeupEditor(desk, panel)};
}

} // namespace loopwright
