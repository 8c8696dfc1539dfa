#include "app/desktop/job/MakeupTable.h"

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/form/TypedNumber.h"
#include "app/desktop/widgets/KeyedChoice.h"
#include "app/desktop/widgets/SignLine.h"

#include <QGridLayout>
#include <QJsonArray>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>

namespace loopwright {

namespace {

/// A number and its unit.
const QRegularExpression &figureForm()
{
    static const QRegularExpression form(QStringLiteral("^([-+]?[\\d.,]+)\\s*([^\\d\\s]*)$"));
    return form;
}

/// "9000", "9000 ft", "2.7 km" and "400 m" as a number under its key; other texts stay texts, so
/// that the codec refuses them by name.
void insertFigure(QJsonObject &object, const QString &typed, const QString &plainKey,
                  const std::vector<std::pair<QString, QString>> &unitKeys)
{
    const auto match = figureForm().match(typed.trimmed());
    QString key = plainKey;
    for (const auto &[unit, unitKey] : unitKeys)
        if (match.hasMatch() && match.captured(2).compare(unit, Qt::CaseInsensitive) == 0)
            key = unitKey;
    const bool known = key != plainKey || match.captured(2).isEmpty();
    const auto number = typedNumber(match.captured(1), decimalMark());
    object.insert(key, number && known ? QJsonValue(*number) : QJsonValue(typed));
}

void insertWire(QJsonObject &object, const QString &typed)
{
    QString plain = typed;
    plain.remove(
        QRegularExpression("\\s*(awg|mm)\\s*$", QRegularExpression::CaseInsensitiveOption));
    const bool diameter = plain.contains(u'.') || plain.contains(u',') || typed.contains("mm");
    insertFigure(object, plain, diameter ? "diameter_mm" : "gauge_awg", {});
}

/// What a key of an element is called on this page.
QString columnOf(const QString &key)
{
    return key == u"millihenry"        ? MakeupTable::tr("coil")
           : key.startsWith(u"length") ? MakeupTable::tr("length")
           : key == u"type"            ? MakeupTable::tr("kind")
                                       : MakeupTable::tr("wire");
}

QString figure(const QJsonValue &value)
{
    return numberAsTyped(value.toDouble());
}

} // namespace

MakeupTable::MakeupTable(const QString &part, QWidget *parent)
    : QWidget(parent)
    , m_part(part)
    , m_grid(new QGridLayout(this))
    , m_mark(new SignLine)
{
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setColumnStretch(1, 2);
    m_grid->setColumnStretch(2, 3);
    // The units stand below: behind a heading they would make its column wide, or three lines high.
    const QString heads[] = {tr("From the office"), tr("Wire"), tr("Length")};
    for (int column = 0; column < 3; ++column) {
        auto *head = new QLabel(heads[column]);
        whenThemed(head, [head] { head->setFont(sized(0.92, QFont::DemiBold)); });
        m_grid->addWidget(head, 0, column);
    }
    addRow(); // before the temperature: Tab's order cannot move what is first to the end
    m_temperature = makeEdit(part + ".temperature", tr("Temperature of the cable"),
                             tr("°F, or °C; left empty: 70 °F"));
    auto *warmth = new QLabel(m_temperature->accessibleName());
    warmth->setBuddy(m_temperature);
    auto *help =
        new QLabel(tr("Wire: AWG, or mm. Length: ft, or m; of a coil mH. Delete on a row's "
                      "kind takes the row out."));
    help->setForegroundRole(QPalette::PlaceholderText);
    help->setWordWrap(true);
    // Far below any row, so that rows can be put in above them.
    m_grid->addWidget(warmth, 1000, 0);
    m_grid->addWidget(m_temperature, 1000, 1, 1, 2);
    m_grid->addWidget(m_mark, 1001, 0, 1, 3);
    m_grid->addWidget(help, 1002, 0, 1, 3);
    m_mark->hide();
}

QLineEdit *MakeupTable::makeEdit(const QString &name, const QString &accessibleName,
                                 const QString &sample)
{
    auto *edit = new QLineEdit;
    edit->setObjectName(name);
    edit->setAccessibleName(accessibleName);
    edit->setPlaceholderText(sample);
    edit->installEventFilter(this);
    whenThemed(edit, [edit] { edit->setMinimumSize(em(7), em(2.3)); });
    connect(edit, &QLineEdit::textEdited, this, [this] {
        clearMark();
        ensureEmptyRow();
        emit edited();
    });
    return edit;
}

void MakeupTable::addRow()
{
    const int number = int(m_rows.size()) + 1;
    const QString name = QString("%1.%2").arg(m_part).arg(number);
    Row row;
    row.what = new KeyedChoice({{u'S', "section", tr("Section")},
                                {u'T', "bridged_tap", tr("Tap")},
                                {u'C', "load_coil", tr("Coil")}});
    row.what->setObjectName(name + ".what");
    row.what->setName(tr("Element %1").arg(number));
    row.what->installEventFilter(this);
    row.wire = makeEdit(name + ".wire", tr("Wire of element %1").arg(number), {});
    row.length = makeEdit(name + ".length", tr("Length of element %1").arg(number), {});
    m_grid->addWidget(row.what, number, 0);
    m_grid->addWidget(row.wire, number, 1);
    m_grid->addWidget(row.length, number, 2);
    QWidget *before = m_rows.empty() ? nullptr : m_rows.back().length;
    if (before)
        setTabOrder(before, row.what);
    setTabOrder(row.what, row.wire);
    setTabOrder(row.wire, row.length);
    if (m_temperature)
        setTabOrder(row.length, m_temperature);
    m_rows.push_back(row);
    connect(row.what, &KeyedChoice::edited, this, [this, row] { kindEdited(row); });
    connect(row.what, &KeyedChoice::chosen, this, [this, row] { goOnFrom(row.what); });
    showWhatIsAsked(row);
}

/// A row whose kind was taken back is taken out: its figures belong to nothing any more.
void MakeupTable::kindEdited(const Row &row)
{
    if (row.what->code().isEmpty()) {
        row.wire->clear();
        row.length->clear();
    }
    clearMark();
    showWhatIsAsked(row);
    ensureEmptyRow();
    emit edited();
}

bool MakeupTable::isEmpty(const Row &row) const
{
    return row.what->code().isEmpty() && row.wire->text().trimmed().isEmpty() &&
           row.length->text().trimmed().isEmpty();
}

void MakeupTable::ensureEmptyRow()
{
    if (!isEmpty(m_rows.back()))
        addRow();
}

void MakeupTable::showWhatIsAsked(const Row &row)
{
    const bool coil = row.what->code() == u"load_coil";
    row.wire->setEnabled(!coil);
    row.wire->setPlaceholderText(coil ? QString() : tr("26 or %1").arg(localizedFigure(0.4, 2)));
    row.length->setPlaceholderText(coil ? tr("88") : tr("9000 or 2700 m"));
}

QJsonObject MakeupTable::element(const Row &row) const
{
    QJsonObject object{{"type", row.what->code().isEmpty() ? "section" : row.what->code()}};
    const QString length = row.length->text().trimmed();
    if (row.what->code() == u"load_coil") {
        if (!length.isEmpty())
            insertFigure(object, length, "millihenry", {{"mH", "millihenry"}});
        return object;
    }
    if (!row.wire->text().trimmed().isEmpty())
        insertWire(object, row.wire->text().trimmed());
    if (!length.isEmpty())
        insertFigure(object, length, "length_ft", {{"ft", "length_ft"}, {"m", "length_m"}});
    return object;
}

QJsonObject MakeupTable::makeup() const
{
    QJsonArray elements;
    for (const Row &row : m_rows)
        if (!isEmpty(row))
            elements << element(row);
    if (elements.isEmpty())
        return {};
    QJsonObject makeup{{"elements", elements}};
    const QString temperature = m_temperature->text().trimmed();
    if (!temperature.isEmpty())
        insertFigure(makeup, temperature, "temperature_f",
                     {{"F", "temperature_f"},
                      {"°F", "temperature_f"},
                      {"C", "temperature_c"},
                      {"°C", "temperature_c"}});
    return makeup;
}

QJsonObject MakeupTable::typed() const
{
    QJsonArray rows;
    for (const Row &row : m_rows)
        if (!isEmpty(row))
            rows << QJsonArray{row.what->code(), row.wire->text(), row.length->text()};
    QJsonObject typed;
    if (!rows.isEmpty())
        typed.insert("rows", rows);
    if (!m_temperature->text().isEmpty())
        typed.insert("temperature", m_temperature->text());
    return typed;
}

void MakeupTable::setTyped(const QJsonObject &typed)
{
    clearMark();
    const QJsonArray rows = typed.value("rows").toArray();
    while (qsizetype(m_rows.size()) <= rows.size())
        addRow();
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const QJsonArray row = rows.at(qsizetype(i)).toArray();
        m_rows[i].what->setCode(row.at(0).toString());
        m_rows[i].wire->setText(row.at(1).toString());
        m_rows[i].length->setText(row.at(2).toString());
        showWhatIsAsked(m_rows[i]);
    }
    m_temperature->setText(typed.value("temperature").toString());
}

void MakeupTable::setMakeup(const QJsonObject &makeup)
{
    QJsonArray rows;
    for (const QJsonValue &value : makeup.value("elements").toArray()) {
        const QJsonObject each = value.toObject();
        const QString wire = each.contains("gauge_awg")     ? figure(each["gauge_awg"])
                             : each.contains("diameter_mm") ? figure(each["diameter_mm"]) + " mm"
                                                            : QString();
        const QString length = each.contains("length_m")    ? figure(each["length_m"]) + " m"
                               : each.contains("length_ft") ? figure(each["length_ft"])
                                                            : figure(each["millihenry"]);
        rows << QJsonArray{each.value("type"), wire, length};
    }
    QJsonObject typed{{"rows", rows}};
    if (makeup.contains("temperature_c"))
        typed.insert("temperature", QString(figure(makeup["temperature_c"]) + " C"));
    else if (makeup.contains("temperature_f"))
        typed.insert("temperature", figure(makeup["temperature_f"]));
    setTyped(typed);
}

bool MakeupTable::mark(const QString &place, const QString &reason)
{
    static const QRegularExpression form(QStringLiteral("elements\\[(\\d+)\\]"));
    const auto match = form.match(place);
    const int row = match.hasMatch() ? match.captured(1).toInt() + 1 : 0;
    const QString what = columnOf(place.section(u'.', -1));
    // The codec names the key that may stand in the other's place; here one field takes both.
    QString why = reason.startsWith(u"or ") ? tr("is required and missing") : reason;
    if (const QString unclear = unclearAt(row, place); !unclear.isEmpty())
        why = unclear;
    m_mark->tellIfNew(Status::Failed, row > 0 ? tr("Row %1, %2: %3").arg(row).arg(what, why) : why);
    return row > 0;
}

/// Why the figure there cannot be read; empty where that is not what is wrong with it.
QString MakeupTable::unclearAt(int row, const QString &place) const
{
    const auto unclear = [](const QLineEdit *edit) {
        return whyUnclear(figureForm().match(edit->text().trimmed()).captured(1));
    };
    if (row == 0)
        return place.contains(u"temperature") ? unclear(m_temperature) : QString();
    if (row > int(m_rows.size()))
        return {};
    const QString key = place.section(u'.', -1);
    const bool wire = key == u"gauge_awg" || key == u"diameter_mm";
    const Row &at = m_rows[std::size_t(row - 1)];
    return unclear(wire ? at.wire : at.length);
}

void MakeupTable::clearMark()
{
    m_mark->hide();
}

void MakeupTable::tellAnew()
{
    m_mark->forgetTold();
}

QWidget *MakeupTable::firstEmpty() const
{
    return m_rows.back().what;
}

QWidget *MakeupTable::firstField() const
{
    return m_rows.front().what;
}

void MakeupTable::goOnFrom(QObject *editor)
{
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const Row &row = m_rows[i];
        if (editor == row.what && isEmpty(row)) {
            emit entered();
            return;
        }
        QWidget *next = nullptr;
        if (editor == row.what)
            next = row.wire->isEnabled() ? row.wire : row.length;
        else if (editor == row.wire)
            next = row.length;
        else if (editor == row.length && i + 1 < m_rows.size())
            next = m_rows[i + 1].what;
        if (next) {
            next->setFocus(Qt::TabFocusReason);
            return;
        }
    }
    emit entered();
}

bool MakeupTable::eventFilter(QObject *object, QEvent *event)
{
    if (event->type() == QEvent::FocusOut) {
        emit left();
    } else if (event->type() == QEvent::KeyPress) {
        const auto *key = static_cast<QKeyEvent *>(event);
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (enter && !(key->modifiers() & ~Qt::KeypadModifier)) {
            goOnFrom(object);
            return true;
        }
    }
    return QWidget::eventFilter(object, event);
}

} // namespace loopwright
