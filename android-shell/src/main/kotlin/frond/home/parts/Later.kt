package frond.home.parts

import android.view.View

// What happens by itself while a screen is shown, and ends with it.

/** Once, after a while, if the screen is still there. */
fun View.later(millis: Long, act: () -> Unit) = whileShown { Ticking(this, millis, once = true, act) }

/** Again and again while the screen is there. */
fun View.every(millis: Long, act: () -> Unit) = whileShown { Ticking(this, millis, once = false, act) }

/** When the screen goes. */
fun View.whenGone(act: () -> Unit) = addOnAttachStateChangeListener(object : View.OnAttachStateChangeListener {
    override fun onViewAttachedToWindow(view: View) = Unit
    override fun onViewDetachedFromWindow(view: View) = act()
})

private class Ticking(val view: View, val millis: Long, val once: Boolean, val act: () -> Unit) : Runnable {
    override fun run() {
        act()
        if (!once) view.postDelayed(this, millis)
    }
}

private fun View.whileShown(make: () -> Ticking) {
    val ticking = make()
    val start = { postDelayed(ticking, ticking.millis) }
    if (isAttachedToWindow) start()
    addOnAttachStateChangeListener(object : View.OnAttachStateChangeListener {
        override fun onViewAttachedToWindow(view: View) {
            start()
        }

        override fun onViewDetachedFromWindow(view: View) {
            view.removeCallbacks(ticking)
        }
    })
}
