#include "app/cli/commands/LoopCurve.h"

#include "app/cli/Files.h"
#include "app/cli/Layout.h"
#include "app/cli/LimitsFile.h"
#include "app/cli/LoopFile.h"
#include "app/cli/Picture.h"
#include "app/print/LossCurve.h"
#include "core/base/PaperTime.h"

namespace loopwright {

namespace {

class LoopCurve : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("file", m_file, "The make-up: a loop.json, or CSV", Given::Always);
        options.number("--from", m_fromHz, 20, 1e7, "Lowest frequency in Hz (else 200)");
        options.number("--to", m_toHz, 20, 1e7, "Highest frequency in Hz (else 1 MHz)");
        options.integer("--points", m_points, 2, 10000, "How many frequencies (else 25)");
        options.text("--ohms", m_ohms, "Between which resistances: R, or SOURCE,LOAD (else 135)");
        options.text("--out", m_out, "Draws the curve with its limit: F.svg or F.png");
        options.word("--format", m_format, pictureFormats(),
                     "png or svg (else as the name of the picture ends)");
        options.text("--order", m_order, "With --out: the order that stands in the title");
        options.text("--limits", m_limits,
                     "Draws the limit of the set in this file (else of the program's newest)");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto between, terminationsFromText(m_ohms));
        if (m_toHz <= m_fromHz)
            return failure(ErrorCode::Usage, "--to must be above --from");
        LOOPWRIGHT_ASSIGN(const auto makeup, readLoopFile(m_file));
        LOOPWRIGHT_TRY(draw(makeup, context.common().now.value_or(Records::realNow())));
        const auto curve = loopCurve(makeup, m_fromHz, m_toHz, int(m_points), between);
        QJsonArray json;
        ColumnLayout table({">frequency Hz", ">loss dB", ">delay us"});
        for (const LoopResponse &point : curve) {
            json.append(QJsonObject{{"frequency_hz", point.frequencyHz},
                                    {"loss_db", point.lossDb},
                                    {"phase_rad", point.phaseRad},
                                    {"delay_s", point.delaySeconds}});
            table.add({QString::number(point.frequencyHz, 'f', 0),
                       QString::number(point.lossDb, 'f', 2),
                       QString::number(point.delaySeconds * 1e6, 'f', 1)});
        }
        return Answer::of(json, table.text());
    }

private:
    Result<void> draw(const LoopMakeup &makeup, const Moment &now) const
    {
        if (m_out.isEmpty())
            return {};
        LOOPWRIGHT_ASSIGN(const auto limits, limitsToJudgeBy(m_limits));
        CurveData data = curveData(makeup, limits);
        // A file does not say whose it is: who gives the order does.
        data.title =
            QString("Loss of the loop, make-up of %1%2, made %3")
                .arg(fileNameOf(m_file),
                     m_order.isEmpty() ? QString() : QString(", order %1 as given").arg(m_order),
                     paperDay(now.localDate()));
        data.verdict = QString("Predicted %1 dB at %2 kHz: %3 the limit of %4 dB")
                           .arg(QString::number(data.pointDb, 'f', 1))
                           .arg(data.pointHz / 1000)
                           .arg(data.pointDb <= data.limitDb ? "predicted to be within"
                                                             : "predicted to be above")
                           .arg(data.limitDb);
        return writePicture(
            m_out, m_format,
            {[&data] { return curvePng(data); }, [&data] { return curveSvg(data); }});
    }

    QString m_file, m_ohms, m_out, m_format, m_limits, m_order;
    double m_fromHz = 200;
    double m_toHz = 1e6;
    qint64 m_points = 25;
};

} // namespace

std::unique_ptr<Command> makeLoopCurve()
{
    return std::make_unique<LoopCurve>();
}

} // namespace loopwright
