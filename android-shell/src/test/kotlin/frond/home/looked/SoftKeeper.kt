package frond.home.looked

import frond.core.KeeperTrouble
import frond.core.KeyKeeper
import javax.crypto.AEADBadTagException
import javax.crypto.Cipher
import javax.crypto.KeyGenerator
import javax.crypto.SecretKey
import javax.crypto.spec.GCMParameterSpec

/**
 * A key keeper for tests: AES-GCM with keys in memory, because Robolectric has no AndroidKeyStore. Each wrap is under a key
 * of its own; the first byte says which.
 */
class SoftKeeper : KeyKeeper {
    private val keys = HashMap<Byte, SecretKey>()
    private val marks = HashMap<String, ByteArray>()
    private var next: Byte = 0

    override fun wrap(key: ByteArray): ByteArray {
        val alias = next++
        keys[alias] = KeyGenerator.getInstance("AES").apply { init(256) }.generateKey()
        val cipher = Cipher.getInstance("AES/GCM/NoPadding").apply { init(Cipher.ENCRYPT_MODE, keys[alias]) }
        return byteArrayOf(alias) + cipher.iv + cipher.doFinal(key)
    }

    override fun unwrap(wrap: ByteArray): ByteArray {
        val secret = keys[wrap.first()] ?: throw KeeperTrouble.KeyGone()
        val cipher = Cipher.getInstance("AES/GCM/NoPadding")
        cipher.init(Cipher.DECRYPT_MODE, secret, GCMParameterSpec(128, wrap, 1, 12))
        try {
            return cipher.doFinal(wrap, 13, wrap.size - 13)
        } catch (_: AEADBadTagException) {
            throw KeeperTrouble.Failed()
        }
    }

    override fun keepOnly(wrap: ByteArray) {
        keys.keys.retainAll { it == wrap.first() }
    }

    override fun forget() = keys.clear()

    override fun keepMark(diary: ByteArray, mark: ByteArray) {
        marks[diary.toList().toString()] = mark
    }

    override fun keptMark(diary: ByteArray): ByteArray? = marks[diary.toList().toString()]

    override fun forgetMark(diary: ByteArray) {
        marks.remove(diary.toList().toString())
    }
}
