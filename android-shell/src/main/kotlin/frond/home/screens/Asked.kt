package frond.home.screens

import android.view.View
import frond.core.ActivityQuestion
import frond.core.DaysField
import frond.core.GoalQuestion
import frond.core.Instant
import frond.core.RatingAnswer
import frond.core.RatingQuestion
import frond.core.SignChoice
import frond.core.Sign
import frond.core.TextField
import frond.home.parts.Option
import frond.home.parts.Parts
import frond.home.parts.Picked
import frond.home.parts.Rated
import frond.home.parts.Several
import frond.home.parts.Single
import frond.home.parts.Written
import frond.home.parts.Wrong
import frond.home.parts.day
import frond.home.parts.passage
import frond.home.parts.rating
import frond.home.parts.scale
import frond.home.parts.several
import frond.home.parts.single
import frond.home.parts.time
import frond.home.parts.wrongs
import java.time.LocalDate
import java.time.LocalTime
import java.time.ZoneId
import java.time.ZonedDateTime

// Questions that several forms ask, and how their answers are read. What an answer means is the core's to say.

/** What sends a form; the same in every language. */
internal const val SEND = "send"

/** Says what has to be put right; true where it is nothing. */
internal fun Page.right(wrongs: List<Wrong>): Boolean {
    wrongs(wrongs)
    // Above the form it may still say that something else was kept.
    if (wrongs.isNotEmpty()) frame.told(null)
    return wrongs.isEmpty()
}

/** A day and a time, of which both may stay empty. */
internal class WhenAsked(private val day: Picked<LocalDate>, private val time: Picked<LocalTime>) {
    /**
     * The instant meant, in the phone's zone: a day alone is its noon, or now where it is today; a time alone is of today.
     * Nothing where both are empty.
     */
    fun read(page: Page, wrongs: MutableList<Wrong>): Instant? {
        if (day.value == null && time.value == null) return null
        val now = ZonedDateTime.now(ZoneId.systemDefault())
        val on = day.value ?: now.toLocalDate()
        if (time.value == null && on == now.toLocalDate()) return now.instant()
        val local = on.atTime(time.value ?: LocalTime.NOON)
        // A time that comes twice is the first of the two; one that the clocks leave out does not exist.
        val offset = now.zone.rules.getValidOffsets(local).firstOrNull()
        if (offset == null) {
            wrongs += Wrong(time.name, page.words.wrong.noSuchTime)
            return null
        }
        return ZonedDateTime.ofInstant(local, offset, now.zone).instant()
    }

    private fun ZonedDateTime.instant() = Instant(toInstant().toEpochMilli(), offset.totalSeconds, zone.id)
}

/** "When was it?" [hint] says what empty fields mean. */
internal fun Page.whenAsked(label: String, hint: String): WhenAsked {
    heading(label)
    quiet(hint)
    return WhenAsked(day("day", words.fields.day), time("time", words.fields.time))
}

/** The ratings that are asked, and those given before where something is put right. */
internal fun Page.ratings(questions: List<RatingQuestion>, before: (RatingQuestion) -> RatingAnswer? = { null }): RatingsAsked =
    RatingsAsked(
        questions.map { ask ->
            val chosen = when (val answer = before(ask)) {
                null -> null
                is RatingAnswer.Rated -> Rated.Number(answer.v1)
                is RatingAnswer.RatherNotSay -> Rated.RatherNot
            }
            ask to rating("rating-${ask.rating.name}", ask.question, ask.least, ask.most, ask.ratherNotSay, chosen)
        },
    )

internal class RatingsAsked(private val asked: List<Pair<RatingQuestion, Single<Rated>>>) {
    /** What was answered; where an answer is needed, "rather not say" is one. */
    fun read(page: Page, needed: Boolean, wrongs: MutableList<Wrong>): frond.core.Ratings {
        val given = HashMap<frond.core.RatingKind, RatingAnswer>()
        for ((ask, field) in asked) when (val rated = field.value) {
            null -> if (needed) wrongs += Wrong(field.name, page.words.wrong.rating)
            is Rated.Number -> given[ask.rating] = RatingAnswer.Rated(rated.value)
            is Rated.RatherNot -> given[ask.rating] = RatingAnswer.RatherNotSay
        }
        return frond.core.Ratings(
            peak = given[frond.core.RatingKind.PEAK],
            before = given[frond.core.RatingKind.BEFORE],
            after = given[frond.core.RatingKind.AFTER],
            worry = given[frond.core.RatingKind.WORRY],
        )
    }
}

/** Cautions in their groups, none of them chosen beforehand. */
internal fun Parts.signsAsked(signs: List<SignChoice>, chosen: Set<Sign> = emptySet()): SignsAsked {
    val groups = LinkedHashMap<String, MutableList<SignChoice>>()
    for (sign in signs) groups.getOrPut(sign.group) { mutableListOf() } += sign
    return SignsAsked(
        groups.entries.mapIndexed { at, (group, choices) ->
            several("signs-$at", group, choices.map { Option(it.sign, it.question) }, chosen)
        },
    )
}

internal class SignsAsked(private val groups: List<Several<Sign>>) {
    val value: List<Sign> get() = groups.flatMap { it.value }

    /** What is told of all of them is told at the first. */
    val name: String get() = groups.first().name

    fun watch(told: (List<Sign>) -> Unit) {
        for (group in groups) group.watch { told(value) }
    }
}

/** A text of the person's own. */
internal fun Page.textAsked(field: TextField, name: String = "text"): Written =
    passage(name, field.label, field.current.orEmpty(), field.longest)

/** The text; an empty one has to be put right. */
internal fun Page.textOf(field: Written, wrongs: MutableList<Wrong>): String {
    if (field.value.isBlank()) wrongs += Wrong(field.name, words.wrong.empty)
    return field.value
}

/** How able she is at an activity. */
internal fun Page.ableAsked(name: String, ask: ActivityQuestion, current: Int? = null): Single<Int> =
    scale(name, ask.question, ask.least, ask.most, current)

/** How far a goal is reached. */
internal fun Page.reachedAsked(name: String, ask: GoalQuestion, current: Int? = null): Single<Int> =
    single(name, ask.question, ask.choices.map { Option(it.reached, it.label) }, current)

/** A first and a last day. */
internal fun Page.daysAsked(field: DaysField): DaysAsked = DaysAsked(
    day("from", field.from, field.current?.first),
    day("to", field.to, field.current?.last),
)

internal class DaysAsked(private val from: Picked<LocalDate>, private val to: Picked<LocalDate>) {
    /** Both days; nothing where one is missing or they are the wrong way round. */
    fun read(page: Page, wrongs: MutableList<Wrong>): Pair<LocalDate, LocalDate>? {
        val first = from.value
        val last = to.value
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

internal fun View.shownIf(so: Boolean) {
    visibility = if (so) View.VISIBLE else View.GONE
}
