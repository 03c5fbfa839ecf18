package frond.home.parts

import android.content.Context
import android.content.res.ColorStateList
import android.graphics.Color
import android.graphics.Typeface
import android.graphics.drawable.Drawable
import android.graphics.drawable.GradientDrawable
import android.graphics.drawable.RippleDrawable
import android.graphics.drawable.StateListDrawable
import android.util.TypedValue
import android.view.View
import android.widget.TextView
import frond.home.R

// How things look: the project's tokens as this phone has them. Decides how a token becomes a size, a letter or a
// shape; the values themselves are made from bindings/look/tokens.json in the build.

internal fun Context.colour(id: Int): Int = getColor(id)

internal fun Context.px(id: Int): Int = resources.getDimensionPixelSize(id)

internal fun Context.dp(value: Int): Int =
    TypedValue.applyDimension(TypedValue.COMPLEX_UNIT_DIP, value.toFloat(), resources.displayMetrics).toInt()

/** One rem as the letters have it now: it grows with the person's own text size. */
internal fun Context.rem(value: Float): Int =
    TypedValue.applyDimension(TypedValue.COMPLEX_UNIT_SP, value * 16, resources.displayMetrics).toInt()

/** The letters of a text: size, colour, weight, and lines with room between them. */
internal fun TextView.letters(size: Int, colour: Int, strong: Boolean = false, tight: Boolean = false) {
    val pixels = resources.getDimension(size)
    setTextSize(TypedValue.COMPLEX_UNIT_PX, pixels)
    setTextColor(context.colour(colour))
    if (strong) typeface = Typeface.create("sans-serif-medium", Typeface.NORMAL)
    val wanted = if (tight) 1.25f else ratio(context)
    val more = pixels * wanted - paint.getFontMetricsInt(null)
    setLineSpacing(more.coerceAtLeast(0f), 1f)
    // Another script keeps its own direction, and stands where the lines of the page stand.
    textDirection = View.TEXT_DIRECTION_FIRST_STRONG
    textAlignment = View.TEXT_ALIGNMENT_VIEW_START
}

private fun ratio(context: Context): Float {
    val value = TypedValue()
    context.resources.getValue(R.dimen.line_height, value, true)
    return value.float
}

internal fun Context.shape(fill: Int?, radius: Int, edge: Int? = null, edgeDp: Int = 1): GradientDrawable =
    GradientDrawable().apply {
        setColor(if (fill == null) Color.TRANSPARENT else colour(fill))
        cornerRadius = resources.getDimension(radius)
        if (edge != null) setStroke(dp(edgeDp), colour(edge))
    }

/** What is pressed answers at once, without any movement of its own. */
internal fun Context.pressed(shape: Drawable, over: Int, radius: Int): Drawable {
    val ripple = colour(over) and 0x00ffffff or 0x33000000
    return RippleDrawable(ColorStateList.valueOf(ripple), shape, shape(R.color.text, radius))
}

/** A ring around what the keyboard is on. */
internal fun View.ring(radius: Int) {
    defaultFocusHighlightEnabled = false
    foreground = StateListDrawable().apply {
        addState(intArrayOf(android.R.attr.state_focused), context.shape(null, radius, R.color.focus, 3))
    }
}
