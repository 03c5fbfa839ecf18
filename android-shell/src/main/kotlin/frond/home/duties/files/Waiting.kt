package frond.home.duties.files

/** What a file is opened for. */
enum class Opening {
    /** A plan. */
    PLAN,

    /** A copy of the diary, to be restored. */
    COPY,
}

/**
 * What waits while something else is in front: the file to be saved, what a chosen file is for and who asked for it. It
 * lives as long as the process, over a rotation too, and is never written down; where the process was ended meanwhile
 * nothing was saved, and that is said.
 */
class Waiting {
    /** Where shall it go? That is being asked. */
    var leaving: LeavingFile? = null
    var saving: LeavingFile? = null
    var opening: Opening? = null
    var chosen: ((Read?) -> Unit)? = null

    fun takeLeaving(): LeavingFile? = leaving.also { leaving = null }

    fun takeSaving(): LeavingFile? = saving.also { saving = null }

    fun takeOpening(): Opening? = opening.also { opening = null }

    fun takeChosen(): ((Read?) -> Unit)? = chosen.also { chosen = null }
}
