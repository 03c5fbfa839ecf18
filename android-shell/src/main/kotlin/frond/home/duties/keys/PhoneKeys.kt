package frond.home.duties.keys

import android.content.Context
import frond.core.KeeperTrouble
import frond.core.KeyKeeper
import java.util.concurrent.locks.ReentrantLock
import kotlin.concurrent.withLock

/**
 * What the core asks of the phone about keys and marks. Decides only which failure is which; whatever is thrown beneath
 * ends here, so that no text of it crosses into the core, a log or a screen.
 *
 * The bytes of a key that pass through here are overwritten once they were used. Copies that the runtime or the border
 * made on the way are out of reach.
 */
class PhoneKeys(private val keys: Keys, private val marks: Marks) : KeyKeeper {
    constructor(context: Context) : this(Keys(KeystoreBox()), Marks(context))

    // One key after the other: a key store gives no promise about two at once.
    private val one = ReentrantLock()

    override fun wrap(key: ByteArray): ByteArray = told {
        try {
            keys.wrap(key)
        } finally {
            key.fill(0)
        }
    }

    override fun unwrap(wrap: ByteArray): ByteArray = told { keys.unwrap(wrap) }

    override fun keepOnly(wrap: ByteArray) = told { keys.keepOnly(wrap) }

    override fun forget() = told { keys.forget() }

    override fun keepMark(diary: ByteArray, mark: ByteArray) = told { marks.keep(diary, mark) }

    override fun keptMark(diary: ByteArray): ByteArray? = told { marks.kept(diary) }

    override fun forgetMark(diary: ByteArray) = told { marks.forget(diary) }

    private fun <T> told(what: () -> T): T = one.withLock {
        try {
            what()
        } catch (trouble: BoxTrouble) {
            throw when (trouble.failure) {
                BoxFailure.GONE -> KeeperTrouble.KeyGone()
                BoxFailure.REFUSED -> KeeperTrouble.Refused()
                BoxFailure.GARBLED -> KeeperTrouble.Failed()
            }
        } catch (_: Throwable) {
            throw KeeperTrouble.Failed()
        }
    }
}
