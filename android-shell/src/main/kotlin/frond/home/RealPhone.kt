package frond.home

import android.view.View
import frond.core.CueKind
import frond.core.Duty
import frond.core.Phase
import frond.home.screens.Cueing
import frond.home.screens.Phone

/** What only the phone can do, by the duties. */
internal class RealPhone(private val activity: MainActivity) : Phone {
    fun carryOut(duty: Duty) = Unit

    override fun cues(chosen: List<CueKind>, language: String): Cueing = object : Cueing {
        override fun tell(phase: Phase?, word: String, at: View) = Unit
        override fun silence() = Unit
        override fun end() = Unit
    }

    override fun chooseFile(opening: frond.home.duties.files.Opening, chosen: (frond.home.duties.files.Read?) -> Unit) = chosen(null)
    override fun paste(): String? = null
    override val notices = frond.home.screens.Notices.ALLOWED
    override fun askNotices(answered: () -> Unit) = answered()
    override fun openNoticeSettings() = Unit
}
