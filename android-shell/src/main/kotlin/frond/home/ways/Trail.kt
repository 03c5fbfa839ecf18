package frond.home.ways

import frond.core.Does

/**
 * The addresses gone through, the present one last. An answer that has no address of its own (something was kept, a form is
 * shown again) stands in the place of what it answers: back from it leads to what was before that.
 */
internal class Trail {
    private class Step(val does: Does, var kind: String?)

    private val steps = ArrayDeque<Step>()

    /** What is shown has no address of its own. */
    private var between = false

    fun places(): List<Does> = steps.map { it.does }

    /** The address of what is shown, where it has one. */
    fun here(): Does? = steps.lastOrNull()?.does.takeIf { !between }

    fun hasBack(): Boolean = steps.size > 1 || (between && steps.isNotEmpty())

    /** Where back leads. */
    fun back(): Does {
        if (!between) steps.removeLast()
        return steps.last().does
    }

    fun replace(all: List<Does>) {
        steps.clear()
        all.mapTo(steps) { Step(it, null) }
        between = false
    }

    /** A screen of this [kind] is shown, at this address or at none. Answers whether it is another place than before. */
    fun arrive(at: Does?, kind: String): Boolean {
        if (at == null) {
            val last = steps.lastOrNull()
            if (!between && last?.kind == kind) return false
            if (!between && last != null && last.kind != null && steps.size > 1) steps.removeLast()
            between = true
            return true
        }
        val before = here()
        // Today is where every way begins; and what was passed already is gone back to.
        if (at == Does.Today) steps.clear()
        else if (steps.isEmpty()) steps.addLast(Step(Does.Today, null))
        val known = steps.indexOfFirst { it.does == at }
        if (known >= 0) while (steps.size > known) steps.removeLast()
        steps.addLast(Step(at, kind))
        between = false
        return before != at
    }
}
