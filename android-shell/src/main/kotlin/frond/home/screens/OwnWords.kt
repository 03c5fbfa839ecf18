package frond.home.screens

import frond.core.ActivitiesScreen
import frond.core.ActivityQuestion
import frond.core.Does
import frond.core.GoalQuestion
import frond.core.QuestionsScreen
import frond.core.TimeOffScreen
import frond.core.Told
import frond.home.parts.Wrong
import frond.home.parts.problemsHere
import frond.home.ways.Form

// What she tells of her own accord. Nothing is filled in beforehand, and every question can be left out.

/** Questions for the visit. */
internal fun Page.questions(screen: QuestionsScreen) {
    title(screen.title)
    problemsHere()
    text(screen.says)
    val text = textAsked(screen.new)
    offer(screen.new.save, what = SEND) {
        val wrongs = mutableListOf<Wrong>()
        val question = textOf(text, wrongs)
        if (right(wrongs)) go.tell(Told.Question(question), screen.id, then = Does.Questions)
    }
    text(screen.empty)
    screen.questions.forEach(::section)
    also(screen.actions)
}

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
    val able = ableAsked(name, ask)
    offer(save, "$save, ${ask.question}", "keep:$name") {
        val number = able.value
        if (right(if (number == null) listOf(Wrong(name, words.wrong.number)) else emptyList()) && number != null) {
            go.tell(Told.Function(ask.activity, number), ask.id, then = Does.Activities, of = Form(name, name))
        }
    }
}

private fun Page.goal(name: String, ask: GoalQuestion, save: String) {
    val reached = reachedAsked(name, ask)
    offer(save, "$save, ${ask.question}", "keep:$name") {
        val chosen = reached.value
        if (right(if (chosen == null) listOf(Wrong(name, words.wrong.choice)) else emptyList()) && chosen != null) {
            go.tell(Told.Goal(ask.goal, chosen), ask.id, then = Does.Activities, of = Form(name, name))
        }
    }
}

/** Time off. */
internal fun Page.timeOff(screen: TimeOffScreen) {
    title(screen.title)
    problemsHere()
    text(screen.says)
    val days = daysAsked(screen.days)
    offer(screen.days.save, what = SEND) {
        val wrongs = mutableListOf<Wrong>()
        val both = days.read(this, wrongs)
        if (right(wrongs) && both != null) go.tell(Told.TimeOff(both.first, both.second), screen.id, then = Does.TimeOff)
    }
    text(screen.empty)
    screen.standing.forEach(::section)
    also(screen.actions)
}
