package frond.home.duties.reminders

import java.io.DataInputStream
import java.io.DataOutputStream
import java.io.IOException
import java.io.InputStream
import java.io.OutputStream
import java.time.Instant
import java.time.LocalDateTime
import java.time.ZoneId
import java.time.ZoneOffset

/**
 * What is to be remembered, as the core said it: local times and a few neutral words. Decides what a local time means
 * where the phone is now; leaves to the core which times there are.
 *
 * This is all of a diary that ever lies outside of it: times, and words that name nothing. It tells that somebody is
 * reminded and when; not of what.
 */
data class ReminderPlan(val times: List<ReminderTime>, val words: ReminderWords, val putOffMinutes: Int) {
    /** The first one that is still to come. */
    fun next(now: Instant, zone: ZoneId): ReminderTime? = inOrder(zone).firstOrNull { it.at(zone) > now }

    /** The last one that came, if it may still be shown: not in quiet hours that began since, nor on the next day. */
    fun due(now: Instant, zone: ZoneId): ReminderTime? =
        inOrder(zone).lastOrNull { it.at(zone) <= now }?.takeIf { now < it.until(zone) }

    /** When it comes again if it is put off now; `null` where that would be too late. */
    fun again(now: Instant, zone: ZoneId): ReminderTime? {
        val due = due(now, zone) ?: return null
        val again = now.plusSeconds(putOffMinutes * 60L)
        val local = again.atZone(zone).toLocalDateTime().withNano(0)
        return if (again < due.until(zone)) ReminderTime(local, due.until) else null
    }

    /** The same with another time. */
    fun with(time: ReminderTime): ReminderPlan = copy(times = (times + time).sortedBy { it.at })

    // A change of the clocks can put two local times in the other order.
    private fun inOrder(zone: ZoneId) = times.sortedBy { it.at(zone) }

    /** Writes the stored form. */
    fun write(to: OutputStream) {
        val out = DataOutputStream(to)
        out.writeByte(FORM)
        out.writeByte(putOffMinutes)
        listOf(words.says, words.channel, words.later, words.done).forEach(out::writeUTF)
        out.writeShort(times.size)
        for (time in times) {
            out.writeLong(time.at.toEpochSecond(ZoneOffset.UTC))
            out.writeLong(time.until.toEpochSecond(ZoneOffset.UTC))
        }
        out.flush()
    }

    companion object {
        private const val FORM = 1

        /** As many as the core ever plans. */
        private const val MOST = 50

        /** Reads the stored form; `null` where it is none. */
        fun read(from: InputStream): ReminderPlan? = try {
            readFrom(DataInputStream(from))
        } catch (_: IOException) {
            null
        } catch (_: java.time.DateTimeException) {
            null
        }

        private fun readFrom(stored: DataInputStream): ReminderPlan? {
            if (stored.readUnsignedByte() != FORM) return null
            val putOff = stored.readUnsignedByte()
            val words = ReminderWords(stored.readUTF(), stored.readUTF(), stored.readUTF(), stored.readUTF())
            val count = stored.readUnsignedShort()
            // One more than the core plans may have been put off.
            if (count > MOST + 1) return null
            val local = { LocalDateTime.ofEpochSecond(stored.readLong(), 0, ZoneOffset.UTC) }
            return ReminderPlan(List(count) { ReminderTime(local(), local()) }, words, putOff)
        }
    }
}

/**
 * One reminder, in local time, because it follows the person: nine in the morning stays nine in the morning in another
 * zone. A local time that comes twice is its first occurrence, one that does not come is read with the offset from before
 * the gap (RFC 5545, 3.3.5; `ZonedDateTime.of` documents the same).
 */
data class ReminderTime(val at: LocalDateTime, val until: LocalDateTime) {
    /** The instant at which it comes in this zone. */
    fun at(zone: ZoneId): Instant = at.atZone(zone).toInstant()

    /** From this instant on it is neither shown nor put off. */
    fun until(zone: ZoneId): Instant = until.atZone(zone).toInstant()

    companion object {
        /** From an instant and the offset it was lived with. */
        fun of(atMillis: Long, atOffsetSeconds: Int, untilMillis: Long, untilOffsetSeconds: Int) =
            ReminderTime(local(atMillis, atOffsetSeconds), local(untilMillis, untilOffsetSeconds))

        private fun local(millis: Long, offsetSeconds: Int): LocalDateTime =
            LocalDateTime.ofInstant(Instant.ofEpochMilli(millis), ZoneOffset.ofTotalSeconds(offsetSeconds))
                .withNano(0)
    }
}

/** The neutral words of a notice, chosen by the core: what it says, the name of its kind, and its two buttons. */
data class ReminderWords(val says: String, val channel: String, val later: String, val done: String)
