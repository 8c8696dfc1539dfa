#include "app/desktop/widgets/PageElements.h"

#include "app/desktop/Lanes.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FlowLayout.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QProgressBar>
#include <QScrollArea>
#include <QTextDocument>

namespace loopwright {

namespace {

class LowArea : public QScrollArea
{
public:
    explicit LowArea(double highEm)
        : m_highEm(highEm)
    {
    }

    QSize sizeHint() const override { return {QScrollArea::sizeHint().width(), em(m_highEm)}; }

private:
    double m_highEm;
};

QScrollArea *filled(QScrollArea *area, QWidget *sheet)
{
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidgetResizable(true);
    area->setWidget(sheet);
    return area;
}

} // namespace

QString asTip(const QString &text)
{
    return Qt::mightBeRichText(text)
               ? "<span style=\"white-space:pre-wrap\">" + text.toHtmlEscaped() + "</span>"
               : text;
}

void keepPlain(const QDialog &dialog)
{
    for (QLabel *label : dialog.findChildren<QLabel *>())
        label->setTextFormat(Qt::PlainText);
}

QLabel *makeHeading(const QString &text, double times)
{
    auto *label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    whenThemed(label, [label, times] { label->setFont(sized(times, QFont::DemiBold)); });
    return label;
}

QLabel *makeMuted(const QString &text, double times)
{
    auto *label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setForegroundRole(QPalette::PlaceholderText);
    label->setWordWrap(true);
    whenThemed(label, [label, times] { label->setFont(sized(times)); });
    return label;
}

QLabel *makeText(const QString &text)
{
    auto *label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

QPushButton *makeButton(const QString &text, const QString &objectName,
                        std::function<void()> pressed)
{
    auto *button = new QPushButton(text);
    button->setObjectName(objectName);
    button->setAutoDefault(true); // Enter presses the button that has the focus
    QObject::connect(button, &QPushButton::clicked, button, std::move(pressed));
    return button;
}

QProgressBar *makeProgress(const QString &objectName, const QString &spoken, const Asker &asker)
{
    auto *bar = new QProgressBar;
    bar->setObjectName(objectName);
    bar->setAccessibleName(spoken);
    bar->setTextVisible(false);
    bar->setRange(0, 0);
    QObject::connect(&asker, &Asker::progressed, bar, [bar](qint64 done, qint64 total) {
        bar->setRange(0, 1000);
        bar->setValue(total > 0 ? int(1000 * done / total) : 0);
        bar->setAccessibleDescription(QProgressBar::tr("%1 of %2").arg(done).arg(total));
    });
    return bar;
}

QWidget *makeButtonRow(std::initializer_list<QPushButton *> buttons)
{
    auto *holder = new QWidget;
    auto *row = new FlowLayout(holder);
    row->setContentsMargins(0, 0, 0, 0);
    for (QPushButton *button : buttons)
        row->addWidget(button);
    whenThemed(holder, [row] { row->setSpacing(em(0.5)); });
    return holder;
}

QDialogButtonBox *makeCloseButtons(QDialog *dialog)
{
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    buttons->button(QDialogButtonBox::Close)
        ->setText(QCoreApplication::translate("PageElements", "Close"));
    QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::reject);
    return buttons;
}

QSize sizeWithin(const QWidget &window, double wideEm, double highEm)
{
    return QSize(em(wideEm), em(highEm)).boundedTo(window.size() - QSize(em(1), em(3)));
}

QFrame *makeCard()
{
    auto *card = new QFrame;
    card->setAutoFillBackground(true);
    card->setBackgroundRole(QPalette::Base);
    outlineWhereFlat(card);
    return card;
}

void outlineWhereFlat(QFrame *frame)
{
    whenThemed(frame, [frame] {
        frame->setFrameShape(colours().base == colours().window ? QFrame::StyledPanel
                                                                : QFrame::NoFrame);
    });
}

QScrollArea *inScrollArea(QWidget *sheet)
{
    return filled(new QScrollArea, sheet);
}

QScrollArea *inLowArea(QWidget *sheet, double highEm)
{
    QScrollArea *area = filled(new LowArea(highEm), sheet);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return area;
}

void setPageMargins(QLayout *layout, QWidget *owner)
{
    whenThemed(owner, [layout] {
        layout->setContentsMargins(em(1.4), em(1.1), em(1.4), em(0.8));
        layout->setSpacing(em(0.7));
    });
}

EmptyState::EmptyState(QWidget *parent)
    : QWidget(parent)
    , m_title(makeHeading({}, 1.35))
    , m_sentence(makeMuted({}, 1))
    , m_buttons(new QVBoxLayout)
{
    setObjectName(QStringLiteral("empty"));
    m_title->setAlignment(Qt::AlignHCenter);
    m_sentence->setAlignment(Qt::AlignHCenter);
    auto *column = new QVBoxLayout(this);
    column->addStretch(2);
    column->addWidget(m_title);
    column->addWidget(m_sentence);
    column->addSpacing(em(1));
    column->addLayout(m_buttons);
    column->addStretch(3);
    whenThemed(this, [this, column] {
        m_sentence->setMinimumHeight(0);
        column->setContentsMargins(em(2), em(2), em(2), em(2));
    });
}

void EmptyState::say(const QString &title, const QString &sentence)
{
    m_title->setText(title);
    m_sentence->setText(sentence);
    setAccessibleName(title + " " + sentence);
}

void EmptyState::addButton(QPushButton *button)
{
    m_buttons->addWidget(button, 0, Qt::AlignHCenter);
}

} // namespace loopwright
