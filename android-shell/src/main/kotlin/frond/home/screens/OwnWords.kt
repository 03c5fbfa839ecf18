package frond.home.screens

import frond.core.ActivitiesScreen
import frond.core.ActivityQuestion
import frond.core.DaysField
import frond.core.Does
import frond.core.GoalQuestion
import frond.core.QuestionsScreen
import frond.core.TextField
import frond.core.TimeOffScreen
import frond.core.Told
import frond.home.parts.Picked
import frond.home.parts.Wrong
import frond.home.parts.Written
import frond.home.parts.day
import frond.home.parts.passage
import frond.home.parts.problemsHere
import java.time.LocalDate

// What she tells of her own accord. Nothing is filled in beforehand, and every question can be left out.

/** Questions for the visit. */
internal fun Page.questions(screen: QuestionsScreen) {
    title(screen.title)
    problemsHere()
    text(screen.says)
    val text = ownText(screen.new)
    offer(screen.new.save) {
        if (put(text.needed(words.wrong.empty))) go.tell(Told.Question(text.value), screen.id, then = Does.Questions)
    }
    text(screen.empty)
    screen.questions.forEach(::section)
    also(screen.actions)
}

/** A text of her own. How long it may be the core says, so that nothing is cut off in silence. */
internal fun Page.ownText(field: TextField, name: String = "text"): Written =
    passage(name, field.label, field.current.orEmpty())

internal fun Written.needed(says: String): List<Wrong> = if (value.isBlank()) listOf(Wrong(name, says)) else emptyList()

/** Activities and goals. Each answer is kept for itself; a question that is left out stays without one. */
internal fun Page.activities(screen: ActivitiesScreen) {
    title(screen.title)
    problemsHere()
    text(screen.says)
    text(screen.empty)
    for ((at, ask) in screen.activities.withIndex()) activity("able-$at", ask, screen.save)
    for ((at, ask) in screen.goals.withIndex()) goal("reached-$at", ask, screen.save)
    also(screen.actions)
}

private fun Page.activity(name: String, ask: ActivityQuestion, save: String) {
    val able = scale(name, ask.question, ask.least, ask.most)
    offer(save, "$save, ${ask.question}") {
        val number = able.value
        if (put(if (number == null) listOf(Wrong(name, words.wrong.number)) else emptyList()) && number != null) {
            go.tell(Told.Function(ask.activity, number), ask.id, then = Does.Activities)
        }
    }
}

private fun Page.goal(name: String, ask: GoalQuestion, save: String) {
    val reached = reached(name, ask, null)
    offer(save, "$save, ${ask.question}") {
        val chosen = reached.value
        if (put(if (chosen == null) listOf(Wrong(name, words.wrong.choice)) else emptyList()) && chosen != null) {
            go.tell(Told.Goal(ask.goal, chosen), ask.id, then = Does.Activities)
        }
    }
}

/** Time off. */
internal fun Page.timeOff(screen: TimeOffScreen) {
    title(screen.title)
    problemsHere()
    text(screen.says)
    val days = daysAsked(screen.days)
    offer(screen.days.save) {
        val wrongs = mutableListOf<Wrong>()
        val both = days.read(wrongs)
        if (put(wrongs) && both != null) go.tell(Told.TimeOff(both.first, both.second), screen.id, then = Does.TimeOff)
    }
    text(screen.empty)
    screen.standing.forEach(::section)
    also(screen.actions)
}

/** A first and a last day, both needed. */
internal class TwoDays(private val page: Page, private val from: Picked<LocalDate>, private val to: Picked<LocalDate>) {
    /** Both; none where something has to be put right, which is added to [wrongs]. */
    fun read(wrongs: MutableList<Wrong>): Pair<LocalDate, LocalDate>? {
        val (first, last) = from.value to to.value
        if (first == null) wrongs += Wrong(from.name, page.words.wrong.day)
        if (last == null) wrongs += Wrong(to.name, page.words.wrong.day)
        if (first == null || last == null) return null
        if (last < first) {
            wrongs += Wrong(to.name, page.words.wrong.endBeforeStart)
            return null
        }
        return first to last
    }
}

internal fun Page.daysAsked(field: DaysField): TwoDays = TwoDays(
    this,
    day("from", field.from, field.current?.first),
    day("to", field.to, field.current?.last),
)
