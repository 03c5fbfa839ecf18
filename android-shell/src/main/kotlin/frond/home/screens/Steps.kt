package frond.home.screens

import frond.core.LadderScreen
import frond.core.Rung
import frond.core.StepCheckScreen
import frond.core.Told
import frond.core.Why
import frond.home.parts.ToPress

// The steps of the plan. Smaller is one tap; a larger one comes after its caution.

/** The steps, and which is used now. */
internal fun Page.ladder(screen: LadderScreen) {
    title(screen.title)
    text(screen.empty)
    if (screen.empty == null) text(screen.smallerIsFine)
    for ((at, rung) in screen.rungs.withIndex()) rung(at, rung, screen)
    also(screen.actions)
}

private fun Page.rung(at: Int, rung: Rung, screen: LadderScreen) =
    card(rung.name, here = rung.note.takeIf { rung.present }) {
        text(rung.used)
        if (rung.present) return@card
        quiet(rung.note)
        fun choose(why: Why) = go.tell(Told.Step(rung.id, why))
        if (!rung.larger) {
            equal(listOf(ToPress(rung.choose, what = rung.id) { choose(Why.OWN_CHOICE) }))
        } else {
            // Opened, it says the one caution first; nothing is chosen by opening it.
            fold("rung-$at", rung.choose) {
                notice(listOf(screen.largerCaution))
                equal(
                    listOf(
                        ToPress(words.tell.stay) { go.press(frond.core.Does.Ladder) },
                        ToPress(words.tell.stepClinician, what = Why.CLINICIAN) { choose(Why.CLINICIAN) },
                        ToPress(words.tell.stepOwn, what = Why.OWN_CHOICE) { choose(Why.OWN_CHOICE) },
                    ),
                )
            }
        }
    }

/** "Is this what you use now?" */
internal fun Page.stepCheck(screen: StepCheckScreen) {
    title(screen.title)
    text(screen.empty)
    lead(screen.step)
    next(screen.next)
    also(screen.actions)
}
