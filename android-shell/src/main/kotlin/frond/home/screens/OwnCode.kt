package frond.home.screens

import frond.core.SetCodeScreen
import frond.core.WholeRequest
import frond.home.parts.later
import frond.home.parts.problemsHere
import frond.home.parts.secret
import frond.home.parts.wrongs

/** The app's own code is chosen, changed or taken away. What is typed leaves the field as soon as it is sent. */
internal fun Page.setCode(screen: SetCodeScreen) {
    title(screen.title)
    problemsHere()
    text(screen.says)
    val new = secret(screen.set.new.field.key(), screen.set.new.label, screen.set.new.hint)
    val again = secret(screen.set.again.field.key(), screen.set.again.label, screen.set.again.hint)
    val keep = { go.whole(WholeRequest.SetCode(new.taken(), again.taken())) }
    again.whenDone(keep)
    next(screen.set.submit, SEND) { keep() }
    screen.remove?.let { form ->
        card(form.title) {
            text(form.says)
            val wait = form.wait
            if (wait != null) {
                notice(wait.says)
                column.later(wait.millis.toLong()) { go.whole(WholeRequest.CodeForm) }
            } else {
                val code = secret(form.code.field.key(), form.code.label, form.code.hint)
                offer(form.submit, what = "remove") { go.whole(WholeRequest.RemoveCode(code.taken())) }
            }
        }
    }
    also(screen.actions)
    wrongs(screen.problems.map(::wrong))
}
