package frond.home.duties.keys

/**
 * Keys that have a name, never leave the place where they are kept, and seal a few bytes. Decides what a place for
 * keys has to be able to do, and the three ways in which it can fail; leaves to [Keys] which key is for what.
 *
 * The phone's own is [KeystoreBox]. Another stands in for it where there is no key store, as under test.
 */
interface SecretBox {
    /** Makes a new key under this name. */
    fun make(name: String)

    /** Seals [plain] so that it opens only beside [beside]. */
    fun seal(name: String, plain: ByteArray, beside: ByteArray): ByteArray

    /** Opens what [seal] gave. */
    fun open(name: String, sealed: ByteArray, beside: ByteArray): ByteArray

    /** The names there are. */
    fun names(): Set<String>

    /** Destroys a key, if there is one. */
    fun destroy(name: String)
}

/** Why a box did not do it. */
enum class BoxFailure {
    /** The key is not there any more, or the phone says that it can never be used again. */
    GONE,

    /** What was to be opened was not sealed here, or is garbled. */
    GARBLED,

    /** Anything else: it may work another time. */
    REFUSED,
}

/** A box failed. It carries no text, no cause and no stack, so that nothing of it can reach a log or a screen. */
class BoxTrouble(val failure: BoxFailure) : Exception(null, null, false, false)
