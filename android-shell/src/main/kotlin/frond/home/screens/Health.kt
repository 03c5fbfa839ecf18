package frond.home.screens

import frond.core.Answer
import frond.core.AnswerChoice
import frond.core.FullListAnswers
import frond.core.HoldQuestionsScreen
import frond.core.Question
import frond.core.QuestionGroup
import frond.core.Request
import frond.core.ScreeningScreen
import frond.core.Sign
import frond.core.SignGroup
import frond.core.Told
import frond.home.parts.Option
import frond.home.parts.Single
import frond.home.parts.Wrong
import frond.home.parts.problemsHere
import frond.home.parts.single

// The questions about health. Nothing is answered beforehand, there is no "no to all", and not being sure is an answer.

private class GroupAsked(
    val group: QuestionGroup,
    val answer: Single<Answer>,
    val questions: List<Pair<Question, Single<Answer>>>,
)

/** The whole list, group by group. A group that was not answered with no opens its questions one by one. */
internal fun Page.screening(screen: ScreeningScreen) {
    title(screen.title)
    problemsHere()
    text(screen.why, screen.how, screen.nobodyTold)
    val asked = screen.groups.map { group(it, screen.answers) }
    next(screen.send, SEND) {
        val list = FullListAnswers(groups = HashMap<SignGroup, Answer>().apply {
            for (one in asked) one.answer.value?.let { put(one.group.group, it) }
        }, signs = HashMap<Sign, Answer>().apply {
            // What a person answered to a question herself stands, whatever its group was answered with later.
            for (one in asked) for ((question, field) in one.questions) field.value?.let { put(question.sign, it) }
        })
        val open = asked.filter { it.answer.value != Answer.NO }
        val left = asked.any { it.answer.value == null } || open.any { one -> one.questions.any { it.second.value == null } }
        // What is missing is for the core to say.
        if (left) go.ask(Request.Screening(list, sent = true)) else go.tell(Told.FullList(list), screen.id)
    }
    if (screen.left != null) right(missing(screen, asked))
    also(screen.actions)
}

private fun Page.missing(screen: ScreeningScreen, asked: List<GroupAsked>): List<Wrong> {
    val wrongs = mutableListOf(Wrong("", screen.left.orEmpty()))
    for (one in asked) {
        if (one.group.answered == null) wrongs += Wrong(one.answer.name, words.wrong.answer)
        if (one.group.open && one.group.answered != null) {
            for ((question, field) in one.questions) {
                if (question.answered == null) wrongs += Wrong(field.name, words.wrong.answer)
            }
        }
    }
    return wrongs
}

private fun Page.group(group: QuestionGroup, answers: List<AnswerChoice>): GroupAsked {
    val options = answers.map { Option(it.answer, it.label) }
    val name = "group-${group.group.name}"
    // "Any of these": all of them stand there before she answers.
    val answer = single(name, group.name, options, group.answered, group.ask, group.questions.map { it.ask })
    val before = column.childCount
    val questions = mutableListOf<Pair<Question, Single<Answer>>>()
    card(group.each) {
        for (question in group.questions) {
            // "No" to the group answers each of them, and that is not what she answered herself.
            val own = question.answered.takeIf { group.answered != Answer.NO }
            questions += question to single("sign-${question.sign.name}", question.ask, options, own)
        }
    }
    val card = column.getChildAt(before)
    answer.watch { card.shownIf(it == Answer.YES || it == Answer.NOT_SURE) }
    return GroupAsked(group, answer, questions)
}

/** The questions without whose answers no breath is held. */
internal fun Page.holdQuestions(screen: HoldQuestionsScreen) {
    title(screen.title)
    problemsHere()
    text(screen.why, screen.caution)
    val asked = screen.questions.map { question ->
        question to single("condition-${question.condition.name}", question.ask, screen.answers.map { Option(it.answer, it.label) })
    }
    next(screen.send, SEND) {
        val wrongs = asked.filter { it.second.value == null }.map { Wrong(it.second.name, words.wrong.answer) }
        if (right(wrongs)) {
            val answers = asked.mapNotNull { (question, field) -> field.value?.let { question.condition to it } }.toMap()
            go.tell(Told.HoldConditions(answers), screen.id)
        }
    }
    also(screen.actions)
}
