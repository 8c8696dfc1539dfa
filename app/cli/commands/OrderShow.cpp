#include "app/cli/commands/OrderShow.h"

#include "app/actions/Orders.h"
#include "app/cli/DecisionText.h"
#include "app/cli/Layout.h"
#include "core/certificate/Slips.h"

namespace loopwright {

namespace {

/// The key, as the record has it.
QString keyOrMark(const QList<Person> &people, const QString &key)
{
    return isRegistered(people, key) ? key : markedNameOf(people, key);
}

QString visitText(const Visit &visit, const QList<Person> &people)
{
    QStringList parts;
    if (visit.left)
        parts << visit.arrived.text() + " to " + visit.left->text();
    else
        parts << "since " + visit.arrived.text();
    if (!visit.installer.isEmpty())
        parts << "by " + keyOrMark(people, visit.installer);
    if (visit.result)
        parts << plainWord(toText(*visit.result));
    parts << "recorded in " + visit.orders.join(" and ");
    return parts.join(", ");
}

/// What an installer reads first: whose line, where, and what the terminal is to be set to.
QString headText(const OrderView &view)
{
    const ServiceOrder &order = view.order;
    LabelledLines lines;
    lines.add("Customer", order.customer)
        .add("Premises", order.premises)
        .add("Circuit", order.circuit)
        .add("Serving office", order.office + " " + view.office.name)
        .add("Order", toText(order.type).replace('_', ' ') + ", due " +
                          order.dueDate.toString(Qt::ISODate) + ", " + toText(view.status))
        .add("Stage", plainWord(toText(view.stage)))
        .add("Completion number",
             isAccepted(view.decision.outcome) ? completionNumber(view.decision) : QString())
        .add("Held", view.held ? "until its identifiers are mended" : "")
        .add("Variant", order.variant)
        .add("Pair", order.pair)
        .add("B1", servicesText(order.b1))
        .add("B2", servicesText(order.b2))
        .add("D", servicesText(order.d))
        .add("Data rate", order.bServices().testFlag(Service::Data)
                              ? QString("%1 bit/s").arg(order.dataRate)
                              : QString())
        .add("Installer", markedNameOf(view.people, order.installer))
        .add("Symptom", order.symptom)
        .add("From the desk", order.deskTest)
        .add("Remarks", order.remarks);
    for (const OutAt &each : view.out)
        lines.add("With", each.station + " since " + each.since.text());
    if (!view.conflicts.empty())
        lines.add("To be settled",
                  QString("%1: see van conflicts %2").arg(view.conflicts.size()).arg(order.number));
    for (const BoardRow &row : view.alsoHere)
        lines.add("Also here",
                  QString("%1, %2, due %3, at %4")
                      .arg(row.order, row.kind == LineKind::Bri ? "basic rate" : "analog",
                           row.due.toString(Qt::ISODate), plainWord(toText(row.stage))));
    for (const Visit &visit : view.visits)
        lines.add("Visit", visitText(visit, view.people));
    return heading("Order " + order.number) + lines.text();
}

QString terminalsText(const ServiceOrder &order)
{
    ColumnLayout table({"terminal", "DN", "SPID", "TEI"});
    for (const OrderedTerminal &terminal : order.terminals)
        table.add({QString::number(terminal.number), terminal.dn, terminal.spid, terminal.tei});
    return table.isEmpty() ? QString() : "\n" + table.text();
}

QString factsText(const std::vector<FactView> &facts, const QList<Person> &people)
{
    if (facts.empty())
        return "\nNothing was recorded yet.\n";
    ColumnLayout table({"recorded", "kind", "installer", "instrument", "fact", "counts"});
    for (const FactView &view : facts)
        table.add(
            {view.fact.at.text(), plainWord(toText(view.fact.kind())),
             keyOrMark(people, view.fact.installer), view.fact.instrument, view.fact.id,
             view.voided ? "voided by " + view.voidedBy + ": " + view.voidedBecause : QString()});
    return "\n" + table.text();
}

QString certificatesText(const std::vector<CertificateView> &certificates)
{
    LabelledLines lines;
    for (const CertificateView &certificate : certificates)
        lines.add("Certificate",
                  QString("%1, code %2, issued %3, %4 copies")
                      .arg(certificate.number, certificate.code, certificate.issuedAt.text())
                      .arg(certificate.copies));
    return certificates.empty() ? QString() : "\n" + lines.text();
}

class ShowOrder : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number, "The order", Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto view, showOrder(*records, m_number));
        return Answer::of(view.toJson(),
                          headText(view) + terminalsText(view.order) +
                              factsText(view.facts, view.people) + "\n" +
                              decisionText(view.decision, nextSentenceOf(view).english()) +
                              certificatesText(view.certificates) + "\n" + eventsText(view.events));
    }

private:
    QString m_number;
};

} // namespace

std::unique_ptr<Command> makeOrderShow()
{
    return std::make_unique<ShowOrder>();
}

} // namespace loopwright
