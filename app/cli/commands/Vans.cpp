#include "app/cli/commands/Vans.h"

#include "app/actions/BringBack.h"
#include "app/actions/OpenBundles.h"
#include "app/actions/ReceiveBundles.h"
#include "app/actions/StationConflicts.h"
#include "app/actions/TakeAlong.h"
#include "app/actions/Vans.h"
#include "app/cli/DecisionText.h"
#include "app/cli/Files.h"
#include "app/cli/Layout.h"
#include "core/base/PaperTime.h"
#include "core/history/PublicKey.h"

#include <algorithm>

namespace loopwright {

namespace {

class VanAdd : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("station", m_station, "What the van is called here", Given::Always);
        options.text("--key", m_key, "What key export wrote in the van", Given::Always);
        options.flag("--renew", m_renew, "The van was restored, or has a new key");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto bytes, readFile(m_key));
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto added,
                          addVan(*records, m_station, bytes, fileNameOf(m_key), m_renew));
        return Answer::of(added.toJson(), LabelledLines()
                                              .add("Station", added.station)
                                              .add("Tag", added.tag)
                                              .add("Key", groupedFingerprint(added.fingerprint))
                                              .add("", added.added ? "" : "was known already")
                                              .text());
    }

private:
    QString m_station, m_key;
    bool m_renew = false;
};

class VanLost : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("station", m_station, "The van", Given::Always);
        options.text("--because", m_because, "What became of it", Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_TRY(loseVan(*records, m_station, m_because));
        return Answer::of(QJsonObject{{"station", m_station}, {"lost", true}},
                          "Nothing is taken in from " + m_station + " any more.\n");
    }

private:
    QString m_station, m_because;
};

class VanTake : public Command
{
public:
    void declare(Options &options) override
    {
        options.texts("order", m_wish.orders, "Orders that go along");
        options.text("--installer", m_wish.installer, "All open orders of this person");
        options.date("--due-by", m_wish.dueBy, "Of these, those that are due up to this day");
        options.text("--to", m_wish.station, "The van", Given::Always);
        options.text("--out", m_wish.out, "The file for the van", Given::Always);
        options.integer("--split", m_split, 1, 10'000, "So many orders in one file at most");
        options.flag("--anyway", m_wish.anyway, "Also what another van has");
    }

    Result<Answer> run(CommandContext &context) override
    {
        if (m_wish.orders.isEmpty() == m_wish.installer.isEmpty())
            return failure(ErrorCode::Usage,
                           "Name orders, or whose orders they are (--installer).");
        m_wish.split = int(m_split);
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto taken,
                          takeAlong(*records, m_wish, context.progress("orders")));
        LabelledLines text;
        text.add("Station", taken.station + " (" + taken.tag + ')')
            .add("Orders", taken.orders.join(", "))
            .add("Files", taken.files.join(", "))
            .add("Bundle", taken.bundle);
        QString stays;
        for (const TakenAlong::Stays &each : taken.stays)
            stays += each.reason.english() + '\n';
        if (taken.orders.isEmpty() && taken.stays.empty())
            stays += "Nothing to take along: no open order is theirs.\n";
        Answer answer = Answer::of(taken.toJson(), text.text() + stays);
        answer.yes = taken.stays.empty() && !taken.orders.isEmpty();
        return answer;
    }

private:
    TakingAlong m_wish;
    qint64 m_split = 0;
};

/// What came of files that were opened or received, for a person.
QString textOf(const TakenBundle &file, const char *taken)
{
    QString text = file.file + ": ";
    switch (file.verdict) {
    case BundleVerdict::Refused:
        return text + "refused: " + file.reason + '\n';
    case BundleVerdict::AlreadyThere:
        return text + "was there already\n";
    case BundleVerdict::Taken:
        text += QString(taken) + ", from " + file.station + '\n';
    }
    for (const JoinedOrder &order : file.orders) {
        text += "  " + order.order + ": ";
        if (order.verdict == BundleVerdict::Refused)
            text += "refused: " + order.reason;
        else if (order.verdict == BundleVerdict::AlreadyThere)
            text += "was there already";
        else
            text +=
                QString("%1 new").arg(order.added.size()) +
                (order.certificates.isEmpty() ? QString()
                                              : ", certificate " + order.certificates.join(", ")) +
                (order.conflicts.isEmpty() ? QString()
                                           : ", to be settled: " + order.conflicts.join(", "));
        text += '\n';
        for (const Finding &finding : order.findings)
            text += "    " + finding.reason.english() + '\n';
    }
    return text;
}

Answer answerOf(const std::vector<TakenBundle> &files, const char *taken)
{
    QJsonArray list;
    QString text;
    bool conflicts = false, refused = false, any = false;
    for (const TakenBundle &file : files) {
        list << file.toJson(taken);
        text += textOf(file, taken);
        any = any || file.verdict != BundleVerdict::Refused;
        refused = refused || file.refuses();
        conflicts = conflicts || std::ranges::any_of(file.orders, [](const JoinedOrder &order) {
                        return !order.conflicts.isEmpty();
                    });
    }
    Answer answer = Answer::of(QJsonObject{{"files", list}}, text);
    answer.yes = !refused && !conflicts;
    answer.refusedWhole = !any;
    return answer;
}

Result<std::vector<BundleInput>> inputsOf(const QStringList &names)
{
    std::vector<BundleInput> inputs;
    for (const QString &name : names) {
        LOOPWRIGHT_ASSIGN(const auto bytes, readFile(name));
        inputs.push_back({fileNameOf(name), bytes});
    }
    return inputs;
}

class VanOpen : public Command
{
public:
    void declare(Options &options) override
    {
        options.texts("file", m_files, "What the office handed out", Given::Always,
                      Separation::None);
        options.text("--issuer", m_issuer,
                     "Fingerprint of the issuer's new key, as the office reads it out");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto inputs, inputsOf(m_files));
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto opened,
                          openBundles(*records, inputs, m_issuer, context.progress("opening")));
        return answerOf(opened, "opened");
    }

private:
    QStringList m_files;
    QString m_issuer;
};

class VanBring : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("--out", m_wish.out, "The file for the office", Given::Always);
        options.text("--since", m_wish.since, "Only what is newer than this bundle");
        options.integer("--split", m_split, 1, 10'000, "So many orders in one file at most");
        options.flag("--keep", m_wish.keep, "The orders stay with this van");
    }

    Result<Answer> run(CommandContext &context) override
    {
        m_wish.split = int(m_split);
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto brought,
                          bringBack(*records, m_wish, context.progress("orders")));
        const QString text = brought.orders.isEmpty()
                                 ? QString("There is nothing to bring back.\n")
                                 : LabelledLines()
                                       .add("Orders", brought.orders.join(", "))
                                       .add("Facts", QString::number(brought.facts))
                                       .add("Files", brought.files.join(", "))
                                       .add("Bundle", brought.bundle)
                                       .text();
        return Answer::of(brought.toJson(), text, !brought.orders.isEmpty());
    }

private:
    BringingBack m_wish;
    qint64 m_split = 0;
};

class VanReceive : public Command
{
public:
    void declare(Options &options) override
    {
        options.texts("file", m_files, "What vans brought back", Given::Always, Separation::None);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto inputs, inputsOf(m_files));
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto received,
                          receiveBundles(*records, inputs, context.progress("receiving")));
        return answerOf(received, "received");
    }

private:
    QStringList m_files;
};

class VanList : public Command
{
public:
    void declare(Options &) override {}

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsAsTheyAre());
        LOOPWRIGHT_ASSIGN(const auto carried, carriedOrders(*records));
        QJsonArray list;
        ColumnLayout table({"station", "tag", "order", "since", "state"});
        for (const CarriedOrder &each : carried) {
            list << toJson(each);
            table.add({each.shownName(), each.station, each.order, paperTime(each.since),
                       each.back ? "back" : "out"});
        }
        return Answer::of(list, carried.empty() ? QString("no order was taken along yet\n")
                                                : table.text());
    }
};

class VanConflicts : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("order", m_order, "Of this order alone");
        options.flag("--all", m_all, "Those that are settled too");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsAsTheyAre());
        LOOPWRIGHT_ASSIGN(const auto conflicts, stationConflicts(*records, m_order, m_all));
        QJsonArray list;
        QString text;
        for (const ShownConflict &each : conflicts) {
            list << each.toJson();
            text += each.conflict.id + "  " + each.conflict.order + "  " +
                    plainWord(toText(each.conflict.code)) + ", " + each.stations.join(", ") + '\n';
            for (const ShownConflict::Side &side : each.sides)
                text += "  " + side.side + ": " + wrapped(side.says.english(), 4) + '\n';
            if (each.conflict.settled)
                text += "  settled by " + each.conflict.settled->by + ": " +
                        each.conflict.settled->because + '\n';
        }
        return Answer::of(list, text.isEmpty() ? QString("no station says otherwise\n") : text);
    }

private:
    QString m_order;
    bool m_all = false;
};

class VanSettle : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("conflict", m_conflict, "As van conflicts names it", Given::Always);
        options.text("--side", m_side, "office, both, or the name of a station", Given::Always);
        options.text("--because", m_because, "Why", Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto settled,
                          settleConflict(*records, m_conflict, m_side, m_because));
        return Answer::of(
            QJsonObject{{"conflict", settled.id}, {"order", settled.order}, {"side", m_side}},
            settled.order + ": settled for " + m_side + '\n');
    }

private:
    QString m_conflict, m_side, m_because;
};

} // namespace

std::unique_ptr<Command> makeVanAdd()
{
    return std::make_unique<VanAdd>();
}
std::unique_ptr<Command> makeVanLost()
{
    return std::make_unique<VanLost>();
}
std::unique_ptr<Command> makeVanTake()
{
    return std::make_unique<VanTake>();
}
std::unique_ptr<Command> makeVanOpen()
{
    return std::make_unique<VanOpen>();
}
std::unique_ptr<Command> makeVanBring()
{
    return std::make_unique<VanBring>();
}
std::unique_ptr<Command> makeVanReceive()
{
    return std::make_unique<VanReceive>();
}
std::unique_ptr<Command> makeVanList()
{
    return std::make_unique<VanList>();
}
std::unique_ptr<Command> makeVanConflicts()
{
    return std::make_unique<VanConflicts>();
}
std::unique_ptr<Command> makeVanSettle()
{
    return std::make_unique<VanSettle>();
}

} // namespace loopwright
