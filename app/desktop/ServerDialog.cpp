#include "app/desktop/ServerDialog.h"

#include "app/actions/Records.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QUrl>
#include <QUrlQuery>
#include <QVBoxLayout>

namespace loopwright {

ServerDialog::ServerDialog(const QString &address, QWidget *window)
    : QDialog(window)
    , m_atStart(new QCheckBox(tr("Open these records at every start")))
    , m_told(new SignLine)
{
    setObjectName(QStringLiteral("server"));
    setWindowTitle(tr("Records on a server"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto *column = new QVBoxLayout(this);
    column->addWidget(makeText(tr("An office keeps its records on a PostgreSQL server, and every "
                                  "desk sees at once what another one does. Who keeps the server "
                                  "says what stands here.")));
    m_host = addField("server.host", tr("Server"), tr("its name in the network"));
    m_port = addField("server.port", tr("Port"), tr("5432 unless it is said"));
    m_database = addField("server.database", tr("Database"), {});
    m_login = addField("server.login", tr("Login"), tr("you act under it"));
    m_password = addField("server.password", tr("Password"), tr("kept nowhere; may be left empty"));
    m_password->setEchoMode(QLineEdit::Password);
    m_atStart->setObjectName(QStringLiteral("server.at_start"));
    m_atStart->setChecked(true);
    column->addWidget(m_atStart);
    m_told->setObjectName(QStringLiteral("server.told"));
    m_told->hide();
    column->addWidget(m_told);
    column->addStretch(1);
    m_open = makeButton(tr("Open them"), QStringLiteral("server.open"), [this] { confirm(); });
    m_open->setDefault(true);
    QPushButton *cancel =
        makeButton(tr("Cancel   Esc"), QStringLiteral("server.cancel"), [this] { reject(); });
    cancel->setAutoDefault(false);
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(m_open);
    buttons->addStretch(1);
    buttons->addWidget(cancel);
    column->addLayout(buttons);
    whenThemed(this, [this, column, window] {
        column->setContentsMargins(em(1.2), em(1), em(1.2), em(1));
        column->setSpacing(em(0.6));
        resize(sizeWithin(*window->window(), 36, 34));
    });
    fill(address);
    m_host->setFocus();
}

QLineEdit *ServerDialog::addField(const char *name, const QString &label, const QString &hint)
{
    auto *field = new QLineEdit;
    field->setObjectName(QLatin1String(name));
    field->setPlaceholderText(hint);
    auto *mark = new FieldMark(label, field);
    mark->setTight(true);
    layout()->addWidget(mark);
    return field;
}

void ServerDialog::fill(const QString &address)
{
    if (!isServerAddress(address))
        return;
    const QUrl url(address);
    const QString folder = QUrlQuery(url).queryItemValue("host", QUrl::FullyDecoded);
    m_host->setText(url.host().isEmpty() ? folder : url.host());
    const QString port = QUrlQuery(url).queryItemValue("port");
    m_port->setText(url.port() > 0 ? QString::number(url.port()) : port);
    m_database->setText(url.path().mid(1));
    m_login->setText(url.userName());
}

QString ServerDialog::addressOf(const QString &host, const QString &port, const QString &database,
                                const QString &login, const QString &password)
{
    if (host.isEmpty() || database.isEmpty() || login.isEmpty())
        return {};
    QUrl url;
    url.setScheme(QStringLiteral("postgresql"));
    url.setUserName(login, QUrl::DecodedMode);
    if (!password.isEmpty())
        url.setPassword(password, QUrl::DecodedMode);
    QUrlQuery parameters;
    if (host.startsWith(u'/')) // a socket on this machine
        parameters.addQueryItem("host", host);
    else
        url.setHost(host);
    if (!port.isEmpty())
        parameters.addQueryItem("port", port);
    url.setPath('/' + database, QUrl::DecodedMode);
    url.setQuery(parameters);
    QString address = url.toString(QUrl::FullyEncoded);
    const QString scheme = QStringLiteral("postgresql:"), whole = scheme + QStringLiteral("//");
    if (!address.startsWith(whole)) // a URL without a host loses its slashes
        address.replace(0, scheme.size(), whole);
    return address;
}

QString ServerDialog::address() const
{
    return addressOf(m_host->text().trimmed(), m_port->text().trimmed(),
                     m_database->text().trimmed(), m_login->text().trimmed(), m_password->text());
}

void ServerDialog::confirm()
{
    bool isNumber = true;
    const QString port = m_port->text().trimmed();
    const uint number = port.isEmpty() ? 1 : port.toUInt(&isNumber);
    if (!isNumber || number == 0 || number > 65'535) {
        m_port->setFocus();
        return m_told->tell(Status::Failed, tr("A port is a number from 1 to 65535."));
    }
    const QString wish = address();
    if (wish.isEmpty()) {
        for (QLineEdit *field : {m_host, m_database, m_login})
            if (field->text().trimmed().isEmpty()) {
                field->setFocus();
                break;
            }
        return m_told->tell(Status::Failed, tr("Server, database and login must be said."));
    }
    accept();
    emit wished(wish, m_atStart->isChecked());
}

} // namespace loopwright
