package frond.home.duties.keys

import android.os.Build
import android.security.keystore.KeyGenParameterSpec
import android.security.keystore.KeyPermanentlyInvalidatedException
import android.security.keystore.KeyProperties
import android.security.keystore.StrongBoxUnavailableException
import frond.home.Newer
import java.security.KeyStore
import javax.crypto.AEADBadTagException
import javax.crypto.Cipher
import javax.crypto.KeyGenerator
import javax.crypto.SecretKey
import javax.crypto.spec.GCMParameterSpec

/**
 * The phone's own key store: AES-256-GCM, in the separate security chip where the phone has one.
 *
 * The keys are **not** bound to the phone's screen lock. A key so bound is destroyed when the screen lock is taken away
 * (and, bound to fingerprints, when one is added), and the diary with it; and it would keep out nobody whom the app's own
 * code is for, because who shares a life often knows the lock of the phone. The app's own code is a lock beside this key,
 * stretched and sealed in the core, and stays apart from the phone's. What the key does is to tie the diary to this phone:
 * a copy of the files alone opens to nobody.
 *
 * No key store is there where the tests run, so these few lines have run on no device; everything else about keys is in
 * [Keys], which is tested with another [SecretBox].
 */
class KeystoreBox : SecretBox {
    override fun make(name: String) = guarded {
        if (Build.VERSION.SDK_INT < Build.VERSION_CODES.P || !inItsOwnChip(name)) generate(wanted(name))
    }

    /** From Android 9, where the phone has such a chip. */
    @Newer
    private fun inItsOwnChip(name: String): Boolean = try {
        generate(wanted(name).setIsStrongBoxBacked(true))
        true
    } catch (_: StrongBoxUnavailableException) {
        false
    }

    override fun seal(name: String, plain: ByteArray, beside: ByteArray): ByteArray = guarded {
        val cipher = Cipher.getInstance(AES_GCM)
        // The key store chooses the nonce itself and accepts no other.
        cipher.init(Cipher.ENCRYPT_MODE, key(name))
        cipher.updateAAD(beside)
        cipher.iv + cipher.doFinal(plain)
    }

    override fun open(name: String, sealed: ByteArray, beside: ByteArray): ByteArray = guarded {
        if (sealed.size < NONCE + TAG_BITS / 8) throw BoxTrouble(BoxFailure.GARBLED)
        val cipher = Cipher.getInstance(AES_GCM)
        cipher.init(Cipher.DECRYPT_MODE, key(name), GCMParameterSpec(TAG_BITS, sealed, 0, NONCE))
        cipher.updateAAD(beside)
        cipher.doFinal(sealed, NONCE, sealed.size - NONCE)
    }

    override fun names(): Set<String> = guarded { store().aliases().toList().toSet() }

    override fun destroy(name: String) = guarded { store().deleteEntry(name) }

    private fun store(): KeyStore = KeyStore.getInstance(PLACE).apply { load(null) }

    private fun key(name: String): SecretKey {
        val store = store()
        // A key that cannot be read just now is refused, not gone: only a name that is not there says that.
        if (!store.containsAlias(name)) throw BoxTrouble(BoxFailure.GONE)
        return store.getKey(name, null) as? SecretKey ?: throw BoxTrouble(BoxFailure.REFUSED)
    }

    private fun wanted(name: String): KeyGenParameterSpec.Builder =
        KeyGenParameterSpec.Builder(name, KeyProperties.PURPOSE_ENCRYPT or KeyProperties.PURPOSE_DECRYPT)
            .setKeySize(256)
            .setBlockModes(KeyProperties.BLOCK_MODE_GCM)
            .setEncryptionPaddings(KeyProperties.ENCRYPTION_PADDING_NONE)
            .setRandomizedEncryptionRequired(true)
            .setUserAuthenticationRequired(false)

    private fun generate(wanted: KeyGenParameterSpec.Builder) {
        KeyGenerator.getInstance(KeyProperties.KEY_ALGORITHM_AES, PLACE).apply { init(wanted.build()) }.generateKey()
    }

    /** Whatever the key store throws ends here; only which of the three it was goes on. */
    private inline fun <T> guarded(what: () -> T): T = try {
        what()
    } catch (trouble: BoxTrouble) {
        throw trouble
    } catch (_: KeyPermanentlyInvalidatedException) {
        throw BoxTrouble(BoxFailure.GONE)
    } catch (_: AEADBadTagException) {
        throw BoxTrouble(BoxFailure.GARBLED)
    } catch (_: Exception) {
        throw BoxTrouble(BoxFailure.REFUSED)
    }

    private companion object {
        const val PLACE = "AndroidKeyStore"
        const val AES_GCM = "AES/GCM/NoPadding"
        const val NONCE = 12
        const val TAG_BITS = 128
    }
}
