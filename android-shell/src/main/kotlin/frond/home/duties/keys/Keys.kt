package frond.home.duties.keys

import java.security.SecureRandom

/**
 * Which key of the phone opens the diary. Decides that every wrap is made under a new key with a random name, that the
 * wrap carries the name, and which keys are destroyed when; leaves to [SecretBox] how a key is kept and to the core what
 * is wrapped.
 *
 * A wrap is one byte 1, one byte for the length of the name, the name, and what the box sealed. What stands before the
 * sealed part is bound to it.
 */
class Keys(private val box: SecretBox, private val random: SecureRandom = SecureRandom()) {
    /** Wraps under a key made now. Older keys stay until [keepOnly] or [forget]. */
    fun wrap(secret: ByteArray): ByteArray {
        val name = newName()
        box.make(name)
        val head = head(name)
        return head + box.seal(name, secret, head)
    }

    /** Unwraps what [wrap] gave. */
    fun unwrap(wrap: ByteArray): ByteArray {
        val name = nameIn(wrap)
        val head = head(name)
        return box.open(name, wrap.copyOfRange(head.size, wrap.size), head)
    }

    /**
     * From now on only this wrap has to open: every other key of ours is destroyed. Where its own key is not there nothing
     * is destroyed at all, because then this wrap is not the one that opens the diary.
     */
    fun keepOnly(wrap: ByteArray) {
        val kept = nameIn(wrap)
        val ours = ours()
        if (kept !in ours) throw BoxTrouble(BoxFailure.GONE)
        destroyAll(ours - kept)
    }

    /** Destroys every key of ours: the diary was erased. */
    fun forget() = destroyAll(ours())

    private fun ours(): Set<String> = box.names().filter { it.startsWith(OURS) }.toSet()

    /** One that cannot be destroyed does not keep the others from it. */
    private fun destroyAll(names: Set<String>) {
        var failed: BoxTrouble? = null
        for (name in names) {
            try {
                box.destroy(name)
            } catch (trouble: BoxTrouble) {
                failed = trouble
            }
        }
        failed?.let { throw it }
    }

    /** Random, so that a name tells nothing and no two diaries share one. */
    private fun newName(): String {
        val bytes = ByteArray(16).also(random::nextBytes)
        return OURS + bytes.joinToString("") { "%02x".format(it) }
    }

    private fun head(name: String): ByteArray = byteArrayOf(FORM, name.length.toByte()) + name.toByteArray(Charsets.US_ASCII)

    private fun nameIn(wrap: ByteArray): String {
        val length = wrap.getOrNull(1)?.toInt() ?: 0
        val end = 2 + length
        val readable = wrap.firstOrNull() == FORM && length == NAME_LENGTH && wrap.size > end
        if (!readable) throw BoxTrouble(BoxFailure.GARBLED)
        val name = String(wrap, 2, length, Charsets.US_ASCII)
        if (!NAME.matches(name)) throw BoxTrouble(BoxFailure.GARBLED)
        return name
    }

    private companion object {
        const val FORM: Byte = 1
        const val OURS = "k."
        const val NAME_LENGTH = 2 + 32
        val NAME = Regex("k\\.[0-9a-f]{32}")
    }
}
