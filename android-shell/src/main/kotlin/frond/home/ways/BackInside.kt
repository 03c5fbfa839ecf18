package frond.home.ways

import android.app.Activity
import android.os.Build
import android.window.OnBackInvokedCallback
import android.window.OnBackInvokedDispatcher
import frond.home.Newer

/**
 * "Back" inside the app, on phones that ask beforehand (from Android 13). It is taken only while there is a way back inside,
 * so that the phone can show where back leads to before the finger is lifted.
 */
@Newer
internal class BackInside(private val activity: Activity, private val back: () -> Unit) {
    private var taken: Any? = null

    fun enable(wanted: Boolean) {
        if (Build.VERSION.SDK_INT < 33 || wanted == (taken != null)) return
        val dispatcher = activity.onBackInvokedDispatcher
        if (wanted) {
            val callback = OnBackInvokedCallback { back() }
            dispatcher.registerOnBackInvokedCallback(OnBackInvokedDispatcher.PRIORITY_DEFAULT, callback)
            taken = callback
        } else {
            dispatcher.unregisterOnBackInvokedCallback(taken as OnBackInvokedCallback)
            taken = null
        }
    }
}
