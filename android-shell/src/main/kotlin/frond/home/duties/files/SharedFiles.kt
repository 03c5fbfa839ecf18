package frond.home.duties.files

import android.content.ContentProvider
import android.content.ContentValues
import android.content.Context
import android.database.Cursor
import android.database.MatrixCursor
import android.net.Uri
import android.os.ParcelFileDescriptor
import android.provider.OpenableColumns
import java.io.File
import java.io.FileNotFoundException
import java.io.IOException
import java.security.SecureRandom

/**
 * Gives a sealed file that is being shared to the one program the person chose. Not exported: who was not granted an
 * address cannot ask. Decides where such a file lies meanwhile and that nothing else can be reached; it can only be read.
 *
 * An address is `content://AUTHORITY/ID/NAME`, the id random, so that an address cannot be guessed.
 */
class SharedFiles : ContentProvider() {
    override fun onCreate(): Boolean = true

    override fun openFile(uri: Uri, mode: String): ParcelFileDescriptor {
        if (mode != "r") throw FileNotFoundException()
        return ParcelFileDescriptor.open(fileOf(uri), ParcelFileDescriptor.MODE_READ_ONLY)
    }

    override fun getType(uri: Uri): String = "application/octet-stream"

    override fun query(
        uri: Uri, columns: Array<out String>?, where: String?, values: Array<out String>?, order: String?,
    ): Cursor? {
        val file = try {
            fileOf(uri)
        } catch (_: FileNotFoundException) {
            return null
        }
        val known = arrayOf(OpenableColumns.DISPLAY_NAME, OpenableColumns.SIZE)
        val asked = columns?.filter { it in known }?.toTypedArray() ?: known
        return MatrixCursor(asked, 1).apply {
            addRow(asked.map { if (it == OpenableColumns.SIZE) file.length() else file.name })
        }
    }

    override fun insert(uri: Uri, values: ContentValues?): Uri? = null

    override fun update(uri: Uri, values: ContentValues?, where: String?, with: Array<out String>?): Int = 0

    override fun delete(uri: Uri, where: String?, with: Array<out String>?): Int = 0

    private fun fileOf(uri: Uri): File {
        val context = context ?: throw FileNotFoundException()
        val parts = uri.pathSegments
        val right = uri.scheme == "content" && uri.authority == authority(context) && parts.size == 2 && ID.matches(parts[0])
        if (!right) throw FileNotFoundException()
        val folder = File(folder(context), parts[0])
        val file = File(folder, parts[1])
        // Whatever the name is made of, the file lies in this very folder.
        if (file.canonicalFile.parentFile != folder.canonicalFile || !file.isFile) throw FileNotFoundException()
        return file
    }

    companion object {
        private val ID = Regex("[0-9a-f]{32}")
        private val NAME = Regex("[A-Za-z0-9][A-Za-z0-9._-]{0,63}")

        private fun authority(context: Context) = "${context.packageName}.shared"

        private fun folder(context: Context) = File(context.cacheDir, "shared")

        /** Lays a sealed file down to be shared, and gives its address. Off the main thread. */
        @Throws(IOException::class)
        fun lay(context: Context, file: SealedFile): Uri {
            val id = ByteArray(16).also(SecureRandom()::nextBytes).joinToString("") { "%02x".format(it) }
            val name = file.name.takeIf(NAME::matches) ?: "file"
            val folder = File(folder(context), id)
            if (!folder.mkdirs()) throw IOException()
            File(folder, name).writeBytes(file.bytes)
            return Uri.Builder().scheme("content").authority(authority(context)).appendPath(id).appendPath(name).build()
        }

        /** Whether an address is one of ours: nobody hands us our own files. */
        fun isOurs(context: Context, uri: Uri): Boolean = uri.authority == authority(context)

        /** Removes everything laid down. Off the main thread. */
        fun wipe(context: Context) {
            folder(context).deleteRecursively()
        }
    }
}
