package frond.home.parts

import android.os.Build
import android.view.View
import android.view.Window
import android.view.WindowInsets
import android.view.accessibility.AccessibilityNodeInfo
import frond.home.Newer

// What younger phones can do more. Nothing else of the parts calls anything newer than Android 8.

/** Whether a screen reader may jump to it as to a heading (from Android 9). */
@Newer
internal fun View.asHeading() {
    if (Build.VERSION.SDK_INT >= 28) isAccessibilityHeading = true
}

@Newer
internal fun View.isHeading(): Boolean = Build.VERSION.SDK_INT >= 28 && isAccessibilityHeading

/** Says which screen it is when it comes up (from Android 9). */
@Newer
internal fun View.asPane(title: String) {
    if (Build.VERSION.SDK_INT >= 28) accessibilityPaneTitle = title
}

/** In which state it is: said after its name (from Android 11); before, it is part of the name. */
@Newer
internal fun View.says(state: String, name: CharSequence) {
    if (Build.VERSION.SDK_INT >= 30) stateDescription = state else contentDescription = "$name, $state"
}

/** In which state something chosen or not chosen is (from Android 11); before, the phone says it in its own language. */
@Newer
internal fun View.inWords(state: String) {
    if (Build.VERSION.SDK_INT >= 30) stateDescription = state
}

/** Text and structure stay out of whatever the system collects to be helpful (from Android 11). */
@Newer
internal fun View.notCollected() {
    importantForAutofill = View.IMPORTANT_FOR_AUTOFILL_NO_EXCLUDE_DESCENDANTS
    if (Build.VERSION.SDK_INT >= 30) {
        importantForContentCapture = View.IMPORTANT_FOR_CONTENT_CAPTURE_NO_EXCLUDE_DESCENDANTS
    }
}

/** Programs that help with using the phone see it; others that merely listen do not (from Android 14). */
@Newer
internal fun View.sensitive() {
    if (Build.VERSION.SDK_INT >= 34) setAccessibilityDataSensitive(View.ACCESSIBILITY_DATA_SENSITIVE_YES)
}

@Newer
internal fun AccessibilityNodeInfo.heading() {
    if (Build.VERSION.SDK_INT >= 28) isHeading = true
}

/** Keeps clear of the phone's bars, its cut-outs and the keyboard (from Android 11; before, the window does it). */
@Newer
internal fun View.keepClear() {
    if (Build.VERSION.SDK_INT < 30) return
    setOnApplyWindowInsetsListener(::clear)
}

@Newer
private fun clear(view: View, insets: WindowInsets): WindowInsets {
    val clear = insets.getInsets(
        WindowInsets.Type.systemBars() or WindowInsets.Type.displayCutout() or WindowInsets.Type.ime(),
    )
    view.setPadding(clear.left, clear.top, clear.right, clear.bottom)
    return WindowInsets.CONSUMED
}

/** The window reaches behind the bars, as younger phones have it anyway; what is in it keeps clear by itself. */
@Newer
internal fun Window.toTheEdges() {
    if (Build.VERSION.SDK_INT >= 30) setDecorFitsSystemWindows(false)
}

/** Says something to those who listen, once. */
@Suppress("DEPRECATION")
@Newer
internal fun View.tell(says: String) = announceForAccessibility(says)
