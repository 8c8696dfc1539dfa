#pragma once
// The panel of any group of steps: each with its label, how it stands and why, and its entry;
// below, what was recorded. Which steps there are, in which order, and what is closed says the
// plan.

#include "app/desktop/job/StationPanel.h"

namespace loopwright {

class StepPanel : public StationPanel
{
    Q_OBJECT
public:
    StepPanel(const PanelInfo &info, JobSession &desk, QWidget *parent = nullptr);

    void showOrder() override;
    QWidget *entry(const QString &need) override;
    bool enters(const QString &need, const QWidget *widget) const override;

protected:
    std::pair<Status, QString> standing() const override;
    bool corrects(const Fact &fact) const override;
    QWidget *refill(const Fact &fact) override;
    bool lists(const Fact &fact) const override;

private:
    /// Of its group, as they stand now, in the order of the work.
    std::vector<const Step *> steps() const;

    StepEditor *editorFor(const Fact &fact) const;

    std::vector<StepEditor *> m_editors;
};

} // namespace loopwright
