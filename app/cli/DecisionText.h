#pragma once
// Orders, decisions and events for a person.

#include "app/cli/Answer.h"
#include "core/acceptance/Decision.h"
#include "core/history/Event.h"

namespace loopwright {

/// "not accepted", "met": the word of a code as people say it.
QString plainWord(const QString &code);

/// The outcome, every criterion with figure, limit and reason, the runs, and what they prove.
/// `next` is the sentence of the plan, which stands at the end of what is not accepted: a decision
/// knows no visit.
QString decisionText(const Decision &decision, const QString &next = {});

/// The decision as an answer: yes for accepted and accepted with exception.
Answer answerOf(const Decision &decision, const QString &next = {});

QString eventsText(const std::vector<Event> &events);

} // namespace loopwright
