package frond.home.looked

import java.io.File
import java.util.Base64

/** A file that the app left in its folder. What the diary's own files hold is read byte by byte in `tests/src/sweep`. */
class Left(val name: String, val bytes: ByteArray) {
    companion object {
        /** Every file there may be, from the app's folder on: the diary's, and beside it what README.md names. */
        val OURS = listOf(
            Regex("no_backup/diary/(keys|journal|snapshot|running|lock|renew)"),
            Regex("no_backup/diary/(backups/[0-9]+|aside/[a-z]+-[0-9]+)"),
            Regex("no_backup/diary\\.tries"),
            Regex("no_backup/(times|language|left|asked)"),
            Regex("no_backup/marks/[0-9a-f]{32}"),
        )

        /** Words of the field in both languages; what a reminder may say is none of them. */
        val WORDS = listOf(
            "pelvic", "vagin", "dilator", "dilatador", "trainer", "session", "discomfort", "molestia", "practice", "breath",
            "respira", "bleeding", "sangrado", "clinic", "programme", "programa", "therap", "terapeuta", "rating", "numb_saddle",
            "a_little_bleeding", "feels_ready", "schedule", "invented",
        )

        fun below(vararg folders: File?): List<Left> = folders.filterNotNull().distinctBy { it.canonicalPath }.flatMap { folder ->
            folder.walkTopDown().filter(File::isFile).map { Left(it.relativeTo(folder).path, it.readBytes()) }.toList()
        }.distinctBy { it.name }

        /** In UTF-8 and UTF-16, plain, as hexadecimal and as base64 in each of its three positions. */
        fun writings(text: String): List<ByteArray> {
            val plain = listOf(Charsets.UTF_8, Charsets.UTF_16LE, Charsets.UTF_16BE).map(text::toByteArray)
            return plain + plain.flatMap { bytes ->
                val hex = bytes.joinToString("") { "%02x".format(it) }
                val coded = (0..2).map { before ->
                    val whole = Base64.getEncoder().encodeToString(ByteArray(before) + bytes)
                    whole.substring((before * 8 + 5) / 6, (before + bytes.size) * 8 / 6)
                }
                (coded + hex + hex.uppercase()).map { it.toByteArray(Charsets.US_ASCII) }
            }
        }

        /** Which of these texts stands in a file or in its name. */
        fun found(left: Left, texts: List<String>): List<String> {
            val within = listOf(left.bytes, lower(left.bytes), left.name.lowercase().toByteArray())
            return texts.filter { text ->
                (writings(text) + writings(text.lowercase())).any { writing -> within.any { stands(writing, it) } }
            }.map { "${left.name}: $it" }
        }

        /** Small letters where there are capitals. */
        private fun lower(bytes: ByteArray) =
            ByteArray(bytes.size) { if (bytes[it] in 'A'.code..'Z'.code) (bytes[it] + 32).toByte() else bytes[it] }

        private fun stands(writing: ByteArray, bytes: ByteArray): Boolean {
            for (at in 0..bytes.size - writing.size) {
                if (bytes[at] != writing[0]) continue
                if (writing.indices.all { bytes[at + it] == writing[it] }) return true
            }
            return false
        }
    }
}
