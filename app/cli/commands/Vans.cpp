#include "app/cli/commands/Vans.h"

#include "app/actions/BringBack.h"
#include "app/actions/OpenBundles.h"
#include "app/actions/ReceiveBundles.h"
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
                                              .add("Key before", groupedFingerprint(added.before))
                                              .add("", added.added ? "" : "was known already")
                                              .add("", added.before.isEmpty()
                                                           ? ""
                                                           : "Have the key read out in the van "
                                                             "(key show) and compare: nobody else "
                                                             "can say that this one is its own.")
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
        for (const TakenAlong::Told &each : taken.stays)
            stays += each.finding.reason.english() + '\n';
        for (const TakenAlong::Told &each : taken.warnings)
            stays += each.order + ": " + each.finding.reason.english() + '\n';
        if (std::ranges::any_of(taken.stays, [](const TakenAlong::Told &each) {
                return each.finding.code == u"order_out";
            }))
            stays += "With --anyway these go along all the same.\n";
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

QString newText(const JoinedOrder &order)
{
    const qsizetype entries = order.added.size();
    const QString count = entries == 0   ? QString("no new entries")
                          : entries == 1 ? QString("1 new entry")
                                         : QString("%1 new entries").arg(entries);
    if (!order.isNew)
        return count;
    return entries == 0 ? QString("new here") : "new here, " + count;
}

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
                newText(order) +
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
    if (conflicts)
        text += "What is to be settled: van conflicts shows both sides, van settle settles it.\n";
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
    void declare(Options &options) override
    {
        options.flag("--still-out", m_stillOut, "Without what is back");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsAsTheyAre());
        LOOPWRIGHT_ASSIGN(auto carried, carriedOrders(*records));
        if (m_stillOut)
            std::erase_if(carried, [](const CarriedOrder &each) { return each.back; });
        QJsonArray list;
        ColumnLayout table({"station", "tag", "order", "since", "state"});
        for (const CarriedOrder &each : carried) {
            list << toJson(each);
            table.add({each.shownName(), each.station, each.order, paperTime(each.since),
                       each.back ? "back" : "out"});
        }
        return Answer::of(list, carried.empty()
                                    ? QString("no order was taken along or opened yet\n")
                                    : table.text());
    }

private:
    bool m_stillOut = false;
};

class VanRecall : public Command
{
public:
    void declare(Options &options) override
    {
        options.texts("order", m_orders, "Orders that did not go along", Given::Always);
        options.text("--from", m_station, "The van that has them by the records", Given::Always);
        options.text("--because", m_because, "Why they did not go", Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_TRY(recallOrders(*records, m_station, m_orders, m_because));
        return Answer::of(
            QJsonObject{{"station", m_station}, {"orders", QJsonArray::fromStringList(m_orders)}},
            m_orders.join(", ") + ": no longer with " + m_station + '\n');
    }

private:
    QStringList m_orders;
    QString m_station, m_because;
};

class VanKnown : public Command
{
public:
    void declare(Options &) override {}

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsAsTheyAre());
        LOOPWRIGHT_ASSIGN(const auto known, knownStations(*records));
        QJsonArray list;
        ColumnLayout table({"station", "tag", "key", "state", "orders"});
        for (const KnownStation &each : known) {
            list << each.toJson();
            table.add({each.station.name, each.station.tag, groupedFingerprint(each.fingerprint),
                       plainWord(each.state()), each.orders.join(", ")});
        }
        return Answer::of(list, known.empty()
                                    ? QString("no station is known yet: van add makes one known\n")
                                    : table.text());
    }
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
std::unique_ptr<Command> makeVanRecall()
{
    return std::make_unique<VanRecall>();
}
std::unique_ptr<Command> makeVanKnown()
{
    return std::make_unique<VanKnown>();
}

} // namespace loopwright
