package frond.home.duties.files

/**
 * A file that leaves Frond. Its name comes from the core and says nothing. Whether it is sealed is its type: only a
 * [SealedFile] can be given to [Sharing], so that no plain file is handed to another program by mistake.
 */
sealed interface LeavingFile {
    val name: String
    val mediaType: String
    val bytes: ByteArray
}

/** Opens only with a key or a passphrase. It may go to a share sheet, or to a place that the person chooses. */
class SealedFile(override val name: String, override val mediaType: String, override val bytes: ByteArray) : LeavingFile

/** Whoever finds it can read it. It goes only to a place that the person chooses herself. */
class OpenFile(override val name: String, override val mediaType: String, override val bytes: ByteArray) : LeavingFile
