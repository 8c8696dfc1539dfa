#pragma once
// One of a few answers, chosen by one key: each answer is a large segment that shows its key. The
// chosen one has a tick and a filled ground. Left and Right walk, Backspace takes the choice back.

#include "app/desktop/AccessibleParts.h"

#include <QWidget>

#include <vector>

namespace loopwright {

struct KeyedOption
{
    QChar key; ///< upper case letter or digit; shown where its label has it, and always heard
    QString code;
    QString label;
};

class KeyedChoice : public QWidget, public AccessibleParts
{
    Q_OBJECT
public:
    explicit KeyedChoice(std::vector<KeyedOption> options, QWidget *parent = nullptr);

    /// Code of the chosen answer; empty where none is.
    QString code() const;
    /// Any other code takes the choice back. Says nothing.
    void setCode(const QString &code);
    /// For a screen reader; the chosen answer is added.
    void setName(const QString &name);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

    Kind kind() const override { return Kind::Choice; }
    int partCount() const override { return int(m_options.size()); }
    QString partName(int part) const override { return m_options[std::size_t(part)].label; }
    QRect partRect(int part) const override { return segments(width())[std::size_t(part)]; }
    bool isPartChosen(int part) const override { return part == m_chosen; }
    void choosePart(int part) override { choose(part); }

signals:
    void edited();                    ///< another answer, or none any more, by hand
    void chosen(const QString &code); ///< by its key or a click: the answer is given

protected:
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;

private:
    void choose(int index);
    int answerOf(QChar key) const; ///< of a shown key first; -1: of none
    void edit(const QString &code);
    void tellName();
    int segmentWidth(std::size_t index) const;
    std::vector<QRect> segments(int width) const;

    std::vector<KeyedOption> m_options;
    QString m_keys; ///< shown ones, one for each answer
    int m_chosen = -1;
    QString m_name;
};

} // namespace loopwright
