package frond.home.looked

import android.graphics.Bitmap
import android.graphics.Rect
import android.view.View
import android.view.ViewGroup
import android.widget.EditText
import android.widget.TextView
import com.google.android.apps.common.testing.accessibility.framework.AccessibilityCheckPreset
import com.google.android.apps.common.testing.accessibility.framework.AccessibilityCheckResult.AccessibilityCheckResultType.ERROR
import com.google.android.apps.common.testing.accessibility.framework.AccessibilityCheckResult.AccessibilityCheckResultType.WARNING
import com.google.android.apps.common.testing.accessibility.framework.AccessibilityHierarchyCheckResult
import com.google.android.apps.common.testing.accessibility.framework.Parameters
import com.google.android.apps.common.testing.accessibility.framework.checks.DuplicateSpeakableTextCheck
import com.google.android.apps.common.testing.accessibility.framework.checks.TextContrastCheck
import com.google.android.apps.common.testing.accessibility.framework.checks.TouchTargetSizeCheck
import com.google.android.apps.common.testing.accessibility.framework.uielement.AccessibilityHierarchyAndroid
import com.google.android.apps.common.testing.accessibility.framework.utils.contrast.BitmapImage
import com.google.android.apps.common.testing.accessibility.framework.utils.contrast.ContrastUtils
import frond.home.R
import frond.home.parts.Frame
import frond.home.parts.isHeading
import org.junit.Assert.fail
import java.util.Locale

/**
 * What must hold of every screen in every look: the published accessibility checks (labels, 48 dp, contrast measured on
 * what was drawn), no text cut, nothing off the side, one heading that is the title, the way out in reach, and no name of
 * a message where its words should be.
 */
fun checked(what: String, shown: Shown, frame: Frame, drawn: Bitmap) {
    val wrong = cut(frame) + accessible(frame, drawn) + contrast(frame, drawn) + small(frame) + words(frame)
    if (wrong.isNotEmpty()) fail("$what, ${shown.tag}:\n" + wrong.distinct().joinToString("\n"))
}

/** Google's Accessibility Test Framework for Android 3.1, with a picture for its contrast checks. */
private fun accessible(frame: Frame, picture: Bitmap): List<String> {
    val parameters = Parameters().apply { putScreenCapture(BitmapImage(picture)) }
    val hierarchy = AccessibilityHierarchyAndroid.newBuilder(frame).build()
    return AccessibilityCheckPreset.getAccessibilityHierarchyChecksForPreset(AccessibilityCheckPreset.LATEST)
        .flatMap { it.runCheckOnHierarchy(hierarchy, null, parameters) }
        .filter { it.type == ERROR || it.type == WARNING }
        .filterNot(::excused)
        .map { "${it.sourceCheckClass.simpleName}: ${it.getMessage(Locale.ENGLISH)} (${it.element?.let { e -> e.text ?: e.contentDescription }})" }
}

/**
 * Two actions may have the same words where they stand at two places. And the contrast check guesses from the picture which
 * colour is the letters'; where it took the frame of a button for them it measured nothing, and [contrast] does.
 */
private fun excused(result: AccessibilityHierarchyCheckResult): Boolean = when (result.sourceCheckClass) {
    DuplicateSpeakableTextCheck::class.java -> true
    // Cut by the end of the window while all of a long screen is looked at; its own size is measured by [small].
    TouchTargetSizeCheck::class.java -> result.metadata?.getBoolean(TouchTargetSizeCheck.KEY_IS_CLIPPED_BY_ANCESTOR, false) == true
    TextContrastCheck::class.java -> {
        val guessed = result.metadata?.getInt(TextContrastCheck.KEY_FOREGROUND_COLOR, 0)
        guessed != result.element?.textColor
    }
    else -> false
}

/** The colour of each text against the colour that most of its own ground has: 4.5 to 1 (WCAG 2.2, 1.4.3). */
private fun contrast(frame: Frame, picture: Bitmap): List<String> {
    return all(frame).filterIsInstance<TextView>().filter { it.isShown && it.text.isNotBlank() }.mapNotNull { view ->
        val at = Rect(view.scrollX, view.scrollY, view.scrollX + view.width, view.scrollY + view.height)
        frame.offsetDescendantRectToMyCoords(view, at)
        if (!at.intersect(0, 0, picture.width, picture.height)) return@mapNotNull null
        val pixels = IntArray(at.width() * at.height())
        picture.getPixels(pixels, 0, at.width(), at.left, at.top, at.width(), at.height())
        val ground = most(pixels)
        val ratio = ContrastUtils.calculateContrastRatio(view.currentTextColor, ground)
        if (ratio >= 4.5) null else "contrast $ratio: \"${view.text.take(40)}\""
    }
}

/** What most of them are. */
private fun most(pixels: IntArray): Int {
    pixels.sort()
    var most = pixels[0]
    var length = 0
    var at = 0
    while (at < pixels.size) {
        var end = at
        while (end < pixels.size && pixels[end] == pixels[at]) end++
        if (end - at > length) {
            most = pixels[at]
            length = end - at
        }
        at = end
    }
    return most
}

/** Whatever is pressed is at least 48 dp high and wide (Android's own measure for touch targets). */
private fun small(frame: Frame): List<String> {
    val least = 48 * frame.resources.displayMetrics.density - 1
    return all(frame).filter { it.isShown && it.isClickable && (it.width < least || it.height < least) }
        .map { "smaller than 48 dp: ${it.width} x ${it.height}, \"${(it as? TextView)?.text ?: it.contentDescription}\"" }
}

private fun cut(frame: Frame): List<String> = all(frame).filterIsInstance<TextView>().filter(View::isShown).flatMap { view ->
    val wrong = mutableListOf<String>()
    val name = "\"${view.text.take(40)}\""
    val layout = view.layout
    if (layout != null) {
        if ((0 until layout.lineCount).any { layout.getEllipsisCount(it) > 0 }) wrong += "ends in dots: $name"
        val room = view.height - view.compoundPaddingTop - view.compoundPaddingBottom
        if (layout.height > room + 1 && view !is EditText) wrong += "cut below: $name, ${layout.height} in $room"
        val across = view.width - view.compoundPaddingLeft - view.compoundPaddingRight
        val widest = (0 until layout.lineCount).maxOfOrNull { layout.getLineMax(it) } ?: 0f
        if (widest > across + 1 && view !is EditText) wrong += "cut at the side: $name, $widest in $across"
    }
    // A field that moves its own text sideways is itself where it is.
    val seen = Rect(view.scrollX, view.scrollY, view.scrollX + view.width, view.scrollY + view.height)
    frame.offsetDescendantRectToMyCoords(view, seen)
    if (seen.left < 0 || seen.right > frame.width) wrong += "off the side: $name, $seen in ${frame.width}"
    val parent = view.parent as View
    if (view.left < 0 || view.right > parent.width) wrong += "wider than what it is in: $name"
    if (view.height == 0 || view.width == 0) wrong += "no room at all: $name"
    wrong
}

private fun words(frame: Frame): List<String> {
    val wrong = mutableListOf<String>()
    val texts = all(frame).filterIsInstance<TextView>()
    for (view in texts) {
        for (text in listOfNotNull(view.text, view.contentDescription, view.hint)) {
            // A message that is missing shows its own name: two or more words in lower case joined by hyphens, alone.
            if (Regex("[a-z]+(-[a-z0-9]+)+").matches(text)) wrong += "the name of a message: $text"
        }
        if (view.text.isBlank() && view.isShown && view !is EditText) wrong += "an empty text"
        if (view is EditText && view.isSaveEnabled) wrong += "typed text goes into saved state"
    }
    val titles = texts.filter { it.id == R.id.title }
    if (titles.size != 1) wrong += "${titles.size} titles"
    if (titles.any { !it.isHeading() }) wrong += "the title is no heading"
    if (texts.none { it.id == R.id.leave && it.isShown }) wrong += "no way out"
    return wrong
}

fun all(view: View): List<View> =
    listOf(view) + if (view is ViewGroup) (0 until view.childCount).flatMap { all(view.getChildAt(it)) } else emptyList()
