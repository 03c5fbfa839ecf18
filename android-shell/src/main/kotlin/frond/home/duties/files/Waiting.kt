package frond.home.duties.files

/** What a file is opened for. */
enum class Opening {
    /** A plan. */
    PLAN,

    /** A copy of the diary, to be restored. */
    COPY,
}

/**
 * What waits while another program is in front: the file to be saved, or what a chosen file is for. It lives as long as the
 * process and is never written down; where the process was ended meanwhile nothing was saved, and that is said.
 */
class Waiting {
    var saving: LeavingFile? = null
    var opening: Opening? = null

    fun takeSaving(): LeavingFile? = saving.also { saving = null }

    fun takeOpening(): Opening? = opening.also { opening = null }
}
