package frond.home.duties

import frond.home.duties.keys.BoxFailure
import frond.home.duties.keys.BoxTrouble
import frond.home.duties.keys.SecretBox
import javax.crypto.AEADBadTagException
import javax.crypto.Cipher
import javax.crypto.KeyGenerator
import javax.crypto.SecretKey
import javax.crypto.spec.GCMParameterSpec

/** Stands in for the phone's key store, which is not there under test: the same cipher, keys in memory. */
class SoftwareBox : SecretBox {
    val keys = mutableMapOf<String, SecretKey>()

    /** Set to fail: every call then ends in this. */
    var fails: (() -> Nothing)? = null

    override fun make(name: String) = now {
        keys[name] = KeyGenerator.getInstance("AES").apply { init(256) }.generateKey()
    }

    override fun seal(name: String, plain: ByteArray, beside: ByteArray): ByteArray = now {
        val cipher = Cipher.getInstance("AES/GCM/NoPadding")
        cipher.init(Cipher.ENCRYPT_MODE, key(name))
        cipher.updateAAD(beside)
        cipher.iv + cipher.doFinal(plain)
    }

    override fun open(name: String, sealed: ByteArray, beside: ByteArray): ByteArray = now {
        if (sealed.size < 12 + 16) throw BoxTrouble(BoxFailure.GARBLED)
        val cipher = Cipher.getInstance("AES/GCM/NoPadding")
        cipher.init(Cipher.DECRYPT_MODE, key(name), GCMParameterSpec(128, sealed, 0, 12))
        cipher.updateAAD(beside)
        try {
            cipher.doFinal(sealed, 12, sealed.size - 12)
        } catch (_: AEADBadTagException) {
            throw BoxTrouble(BoxFailure.GARBLED)
        }
    }

    override fun names(): Set<String> = now { keys.keys.toSet() }

    override fun destroy(name: String) {
        now { keys.remove(name) }
    }

    private fun key(name: String) = keys[name] ?: throw BoxTrouble(BoxFailure.GONE)

    private inline fun <T> now(what: () -> T): T {
        fails?.invoke()
        return what()
    }
}
