package frond.home.duties

import frond.home.duties.reminders.ReminderPlan
import frond.home.duties.reminders.ReminderTime
import frond.home.duties.reminders.ReminderWords
import frond.home.looked.FrondRunner
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Test
import org.junit.runner.RunWith
import java.io.ByteArrayInputStream
import java.io.ByteArrayOutputStream
import java.time.Instant
import java.time.LocalDateTime
import java.time.ZoneId
import kotlin.random.Random

/** Reminder times as local times, over zones and changes of the clock, and their stored form. */
@RunWith(FrondRunner::class)
class ReminderPlanTest {
    private val words = ReminderWords("A moment for you", "Times", "Later", "Done")
    private val madrid = ZoneId.of("Europe/Madrid")
    private val tokyo = ZoneId.of("Asia/Tokyo")

    private fun time(at: String, until: String) = ReminderTime(LocalDateTime.parse(at), LocalDateTime.parse(until))

    private fun at(text: String) = Instant.parse(text)

    private val plan = ReminderPlan(
        listOf(time("2026-03-02T09:00", "2026-03-02T22:00"), time("2026-03-02T20:00", "2026-03-02T22:00")), words, 15,
    )

    @Test
    fun `an instant and its offset become the local time that was lived`() {
        val nine = ReminderTime.of(at("2026-03-02T08:00:00Z").toEpochMilli(), 3600, at("2026-03-02T21:00:00Z").toEpochMilli(), 3600)
        assertEquals(plan.times[0], nine)
    }

    @Test
    fun `local times follow the person into another zone`() {
        assertEquals(at("2026-03-02T08:00:00Z"), plan.times[0].at(madrid))
        assertEquals(at("2026-03-02T00:00:00Z"), plan.times[0].at(tokyo))
        // In the morning of Madrid it is evening in Tokyo: nine is over there, eight in the evening is next.
        assertEquals(plan.times[0], plan.next(at("2026-03-02T07:00:00Z"), madrid))
        assertEquals(plan.times[1], plan.next(at("2026-03-02T07:00:00Z"), tokyo))
    }

    /** RFC 5545, section 3.3.5, both examples. */
    @Test
    fun `a local time that comes twice or never is read as the standard says`() {
        val newYork = ZoneId.of("America/New_York")
        assertEquals(at("2007-11-04T05:30:00Z"), time("2007-11-04T01:30", "2007-11-05T00:00").at(newYork))
        assertEquals(at("2007-03-11T07:30:00Z"), time("2007-03-11T02:30", "2007-03-12T00:00").at(newYork))
    }

    @Test
    fun `what comes too late is not due`() {
        assertNull(plan.due(at("2026-03-02T07:59:00Z"), madrid))
        assertEquals(plan.times[0], plan.due(at("2026-03-02T08:00:00Z"), madrid))
        assertEquals(plan.times[1], plan.due(at("2026-03-02T20:59:59Z"), madrid))
        assertNull("quiet hours have begun", plan.due(at("2026-03-02T21:00:00Z"), madrid))
        assertNull("the next day", plan.due(at("2026-03-03T08:00:00Z"), madrid))
    }

    @Test
    fun `it is put off by what the core said, not into quiet hours`() {
        assertEquals(
            time("2026-03-02T20:35", "2026-03-02T22:00"), plan.again(at("2026-03-02T19:20:00Z"), madrid),
        )
        assertEquals(time("2026-03-02T21:59", "2026-03-02T22:00"), plan.again(at("2026-03-02T20:44:00Z"), madrid))
        assertNull(plan.again(at("2026-03-02T20:45:00Z"), madrid))
        assertNull("nothing is due", plan.again(at("2026-03-02T07:00:00Z"), madrid))
    }

    @Test
    fun `the stored form gives back the same and refuses anything else`() {
        val bytes = ByteArrayOutputStream().also(plan::write).toByteArray()
        assertEquals(plan, ReminderPlan.read(ByteArrayInputStream(bytes)))
        for (cut in bytes.indices) assertNull("cut at $cut", ReminderPlan.read(ByteArrayInputStream(bytes.copyOf(cut))))
        val random = Random(7)
        repeat(2000) { ReminderPlan.read(ByteArrayInputStream(random.nextBytes(random.nextInt(200)))) }
        val garbled = bytes.copyOf()
        repeat(2000) {
            garbled[random.nextInt(garbled.size)] = random.nextInt().toByte()
            ReminderPlan.read(ByteArrayInputStream(garbled))
        }
    }

    @Test
    fun `the stored form holds times and neutral words and nothing else`() {
        val bytes = ByteArrayOutputStream().also(plan::write).toByteArray()
        val wordBytes = listOf(words.says, words.channel, words.later, words.done).sumOf { 2 + it.length }
        assertEquals(1 + 1 + wordBytes + 2 + plan.times.size * 16, bytes.size)
    }
}
