package frond.home.screens

import frond.core.Ended
import frond.core.LogSessionScreen
import frond.core.Practice
import frond.core.PresentSession
import frond.core.RatingAnswer
import frond.core.RatingQuestion
import frond.core.SessionTold
import frond.core.Told
import frond.core.UsedPart
import frond.home.parts.Option
import frond.home.parts.Single
import frond.home.parts.Whole
import frond.home.parts.Written
import frond.home.parts.Wrong
import frond.home.parts.decimal
import frond.home.parts.number
import frond.home.parts.passage
import frond.home.parts.problemsHere
import frond.home.parts.single

/**
 * The form for a session. Nothing is chosen beforehand; where a session is put right, what stands there now is filled in,
 * and what the form does not ask goes along unchanged.
 */
internal fun Page.logSession(screen: LogSessionScreen) {
    val current = screen.current
    title(screen.title)
    problemsHere()
    if (current != null) {
        text(listOf(current.`when`) + current.says + current.signs)
    }
    cautions(screen.cautions)
    val practice = single(
        "practice", screen.practiceLabel, screen.practices.map { Option(it.practice, it.label) }, current?.session?.practice,
    )
    val size = size(screen)
    val position = single(
        "position", screen.positionLabel, screen.positions.map { Option(it.position, it.label) }, current?.session?.position,
    )
    val minutes = number("minutes", screen.minutesLabel, MINUTES, current?.minutes())
    val ended = single("ended", screen.endedLabel, screen.ended.map { Option(it.ended, it.label) }, current?.session?.ended)
    val ratings = ratings(screen.ratings) { current?.rated(it) }
    val signs = folded("signs", screen.signsLabel) { signsAsked(screen.signs) }
    val note = passage("note", screen.noteLabel, current?.session?.note.orEmpty(), hint = screen.noteCaution)
    val began = whenAsked(words.fields.`when`, if (current == null) words.fields.whenHint else words.fields.whenStays)
    practice.watch { size?.show(it is Practice.Trainer) }
    size?.watch { practice.value is Practice.Trainer }

    next(words.fields.keep, SEND) {
        val wrongs = mutableListOf<Wrong>()
        val done = practice.value ?: null.also { wrongs += Wrong(practice.name, words.wrong.practice) }
        val trainer = done is Practice.Trainer
        val used = if (trainer) size?.read(this, wrongs) else null
        val how = position.value ?: null.also { wrongs += Wrong(position.name, words.wrong.position) }
        val seconds = seconds(minutes, ended.value, current)
            ?: null.also { wrongs += Wrong(minutes.name, words.wrong.minutes) }
        val end = ended.value ?: null.also { wrongs += Wrong(ended.name, words.wrong.ended) }
        val rated = ratings.read(this, needed = trainer, wrongs)
        val happened = began.read(this, wrongs)
        if (right(wrongs) && done != null && how != null && seconds != null && end != null) {
            val session = SessionTold(
                practice = done,
                parts = current?.session?.parts.orEmpty().dropLast(1) + UsedPart(used, seconds),
                position = how,
                ended = end,
                ratings = rated,
                signs = signs.value + current?.session?.signs.orEmpty().map { it.sign },
                note = note.value.ifBlank { null },
            )
            val told = Told.Session(session)
            go.tell(if (current == null) told else Told.Correct(current.of, told), screen.id, happened)
        }
    }
    also(screen.actions)
}

/** A size of the plan, or one that is typed. */
private class SizeAsked(private val of: Single<Any>, private val typed: Written) {
    fun show(so: Boolean) {
        of.place.shownIf(so)
        typed.place.shownIf(so && of.value == OTHER)
    }

    fun watch(trainer: () -> Boolean) = of.watch { show(trainer()) }

    /** Tenths of a millimetre. */
    fun read(page: Page, wrongs: MutableList<Wrong>): Int? {
        val chosen = of.value
        if (chosen is Int) return chosen
        if (chosen == null) {
            wrongs += Wrong(of.name, page.words.wrong.size)
            return null
        }
        val millimetres = typed.value.trim().replace(',', '.').toBigDecimalOrNull()
        val tenths = millimetres?.movePointRight(1)
        // Finer than a tenth is not written; the range is the core's.
        val whole = try {
            tenths?.intValueExact()
        } catch (_: ArithmeticException) {
            null
        }
        if (whole == null) wrongs += Wrong(typed.name, page.words.wrong.sizeMm)
        return whole
    }
}

private val OTHER = Unit

private fun Page.size(screen: LogSessionScreen): SizeAsked? {
    if (screen.sizes.isEmpty()) return null
    val sizes = screen.sizes.map { Option<Any>(it.widestDiameterTenthsMm, it.label) }
    val now = screen.current?.session?.parts?.lastOrNull()?.widestDiameterTenthsMm
    val of = single("size", screen.sizeLabel, sizes + Option(OTHER, words.tell.sizeAnother), now)
    val typed = decimal("size_mm", words.tell.sizeMm, hint = screen.sizeOther)
    return SizeAsked(of, typed)
}

/** Time on the main part, pauses left out. What could not begin took none; what is not changed keeps its seconds. */
private fun seconds(minutes: Whole, ended: Ended?, current: PresentSession?): UInt? {
    val typed = minutes.value
    if (typed == null) return if (minutes.isEmpty && ended is Ended.CouldNotStart) 0u else null
    val before = current?.session?.parts?.lastOrNull()?.practisedSeconds
    return if (before != null && current.minutes() == typed) before else typed.toUInt() * 60u
}

private fun PresentSession.minutes(): Int? = session.parts.lastOrNull()?.let { (it.practisedSeconds / 60u).toInt() }

private fun PresentSession.rated(ask: RatingQuestion): RatingAnswer? = when (ask.rating) {
    frond.core.RatingKind.PEAK -> session.ratings.peak
    frond.core.RatingKind.BEFORE -> session.ratings.before
    frond.core.RatingKind.AFTER -> session.ratings.after
    frond.core.RatingKind.WORRY -> session.ratings.worry
}

/** What fits into the field; what can be is the core's to say. */
private val MINUTES = 0..999
