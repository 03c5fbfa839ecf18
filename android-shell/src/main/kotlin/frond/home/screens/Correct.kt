package frond.home.screens

import frond.core.CorrectForm
import frond.core.CorrectScreen
import frond.core.Told
import frond.home.parts.Wrong
import frond.home.parts.problemsHere

/** Putting an entry right: what stands there now is filled in, and the first version stays visible. */
internal fun Page.correct(screen: CorrectScreen) {
    title(screen.title)
    problemsHere()
    quiet(screen.`when`)
    text(screen.was)
    text(screen.says)
    text(screen.nobodyTold)
    val told = asked(screen.form)
    if (told != null) {
        val happened = whenAsked(screen.whenLabel, words.fields.whenStays)
        next(screen.save, SEND) {
            val wrongs = mutableListOf<Wrong>()
            val read = told(wrongs)
            val at = happened.read(this, wrongs)
            if (right(wrongs) && read != null) go.tell(Told.Correct(screen.of, read), screen.id, at)
        }
    }
    also(screen.actions)
}

/** The fields of a form, and how they are read; nothing where nothing can be changed. */
private fun Page.asked(form: CorrectForm): ((MutableList<Wrong>) -> Told?)? = when (form) {
    is CorrectForm.Question -> textAsked(form.v1).let { text -> { Told.Question(textOf(text, it)) } }
    is CorrectForm.LookForward -> textAsked(form.v1).let { text -> { Told.LookForward(textOf(text, it)) } }
    is CorrectForm.Function -> {
        val able = ableAsked("able", form.ask, form.current);
        { wrongs ->
            able.value?.let { Told.Function(form.ask.activity, it) }
                ?: null.also { wrongs += Wrong(able.name, words.wrong.number) }
        }
    }
    is CorrectForm.Goal -> {
        val reached = reachedAsked("reached", form.ask, form.current);
        { wrongs ->
            reached.value?.let { Told.Goal(form.ask.goal, it) }
                ?: null.also { wrongs += Wrong(reached.name, words.wrong.choice) }
        }
    }
    is CorrectForm.TimeOff -> daysAsked(form.v1).let { days ->
        { wrongs -> days.read(this, wrongs)?.let { Told.TimeOff(it.first, it.second) } }
    }
    is CorrectForm.Signs -> {
        val signs = signsAsked(form.signs, form.current.toSet())
        val note = textAsked(form.note, "note");
        { wrongs ->
            if (signs.value.isEmpty()) wrongs += Wrong(signs.name, words.wrong.choice)
            Told.Signs(signs.value, note.value.ifBlank { null })
        }
    }
    is CorrectForm.Nothing -> null
}
