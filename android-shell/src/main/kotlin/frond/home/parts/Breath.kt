package frond.home.parts

import android.annotation.SuppressLint
import android.animation.ValueAnimator
import android.content.Context
import android.graphics.Canvas
import android.graphics.Paint
import android.view.Gravity
import android.view.View
import android.view.ViewGroup.LayoutParams.MATCH_PARENT
import android.view.ViewGroup.LayoutParams.WRAP_CONTENT
import android.widget.LinearLayout
import android.widget.TextView
import frond.core.Pacer
import frond.core.PacerPhase
import frond.core.Phase
import frond.home.R

/** What a breath is doing after so many milliseconds. The same as the core's own function; a test compares them. */
internal class BreathNow(val phase: PacerPhase?, val breath: Long, val progress: Float)

internal fun Pacer.at(millis: Long): BreathNow {
    if (millis >= wholeMillis.toLong()) return BreathNow(null, 0, 0f)
    var within = millis % breathMillis.toLong()
    for (phase in phases) {
        val long = phase.millis.toLong()
        if (within < long) return BreathNow(phase, millis / breathMillis.toLong(), within.toFloat() / long)
        within -= long
    }
    return BreathNow(null, 0, 0f)
}

/** How wide it is drawn, from 0 to 1. */
internal fun BreathNow.width(): Float = when (phase?.phase) {
    null, Phase.HOLD_OUT -> 0f
    Phase.IN -> progress
    Phase.HOLD_IN -> 1f
    Phase.OUT -> 1 - progress
}

/**
 * The breath to follow: a shape that widens and narrows, and beneath it the word of the phase. Where the phone shows no
 * animations the shape stands still and the word alone changes. [passed] says how long it has gone on; [changed] is told
 * each change while it runs, and the first phase of all.
 */
@SuppressLint("ViewConstructor")
internal class Breath(
    context: Context,
    private val pacer: Pacer,
    spoken: String,
    private val running: Boolean,
    private val passed: () -> Long,
    private val changed: (Phase?, String, View) -> Unit,
) : LinearLayout(context) {
    private val shape = Shape(context)
    private val word = TextView(context)
    private var last: Pair<Phase?, Long>? = null
    private val moves = ValueAnimator.areAnimatorsEnabled()

    init {
        orientation = VERTICAL
        gravity = Gravity.CENTER_HORIZONTAL
        val size = minOf(context.dp(176), resources.displayMetrics.widthPixels * 7 / 10)
        addView(shape, LayoutParams(size, size))
        shape.contentDescription = spoken
        word.letters(R.dimen.text_title, R.color.text, tight = true)
        word.textAlignment = View.TEXT_ALIGNMENT_CENTER
        word.gravity = Gravity.CENTER
        // The words follow each other too fast to be read out whenever they change; cues tell the breath.
        word.importantForAccessibility = View.IMPORTANT_FOR_ACCESSIBILITY_NO
        addView(word, LayoutParams(MATCH_PARENT, WRAP_CONTENT).apply { topMargin = context.px(R.dimen.space_3) })
        follow()
    }

    override fun onAttachedToWindow() {
        super.onAttachedToWindow()
        if (running) next()
    }

    private fun next() {
        val act = Runnable {
            if (isAttachedToWindow) {
                follow()
                next()
            }
        }
        postDelayed(act, if (moves) MOVING else STILL)
    }

    private fun follow() {
        val now = pacer.at(passed())
        val key = now.phase?.phase to now.breath
        if (key != last) {
            val text = now.phase?.word ?: pacer.over
            word.text = text
            if (running) changed(now.phase?.phase, text, this)
            last = key
        }
        shape.show(if (moves) now.width() else 0.6f)
    }

    private companion object {
        /** How often it is drawn, in milliseconds: about sixty times a second. */
        const val MOVING = 16L

        /** How often the word is looked at where nothing moves. */
        const val STILL = 50L
    }
}

/** A circle inside a circle. */
private class Shape(context: Context) : View(context) {
    private val line = Paint(Paint.ANTI_ALIAS_FLAG).apply {
        style = Paint.Style.STROKE
        strokeWidth = context.dp(2).toFloat()
        color = context.colour(R.color.action)
    }
    private val ground = Paint(Paint.ANTI_ALIAS_FLAG).apply { color = context.colour(R.color.soft) }
    private var wide = 0f

    fun show(now: Float) {
        wide = now
        invalidate()
    }

    override fun onDraw(canvas: Canvas) {
        val middle = width / 2f
        val most = middle - line.strokeWidth
        canvas.drawCircle(middle, middle, most, line)
        val radius = most * (0.3f + 0.7f * wide)
        canvas.drawCircle(middle, middle, radius, ground)
        canvas.drawCircle(middle, middle, radius, line)
    }
}
