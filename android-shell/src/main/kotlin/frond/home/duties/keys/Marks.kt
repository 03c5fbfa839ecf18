package frond.home.duties.keys

import android.content.Context
import android.util.AtomicFile
import java.io.File
import java.io.FileNotFoundException

/**
 * The mark by which an older copy of the diary's folder is noticed. Decides only where it lies: in a file of its own,
 * outside the diary's folder and outside of what the phone backs up, so that bringing back the one does not bring back the
 * other. What a mark says is the core's; it tells nothing of what was written.
 */
class Marks(private val folder: File) {
    constructor(context: Context) : this(File(context.noBackupFilesDir, "marks"))

    /** Keeps the mark in place of the one before; written aside, synced and renamed. */
    fun keep(diary: ByteArray, mark: ByteArray) {
        require(mark.size <= MOST) { "a mark is short" }
        folder.mkdirs()
        val file = AtomicFile(fileOf(diary))
        val out = file.startWrite()
        try {
            out.write(mark)
            file.finishWrite(out)
        } catch (failure: Exception) {
            file.failWrite(out)
            throw failure
        }
    }

    /** The mark kept last; `null` where there is none. */
    fun kept(diary: ByteArray): ByteArray? = try {
        AtomicFile(fileOf(diary)).readFully()
    } catch (_: FileNotFoundException) {
        null
    }

    /** Removes the mark. */
    fun forget(diary: ByteArray) = AtomicFile(fileOf(diary)).delete()

    private fun fileOf(diary: ByteArray): File {
        require(diary.size == ID) { "a diary's id has 16 bytes" }
        return File(folder, diary.joinToString("") { "%02x".format(it) })
    }

    private companion object {
        const val ID = 16
        const val MOST = 128
    }
}
