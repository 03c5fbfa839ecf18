package frond.home.parts

import android.annotation.SuppressLint
import android.content.Context
import android.graphics.Canvas
import android.graphics.Paint
import android.graphics.Path
import android.os.Bundle
import android.view.Gravity
import android.view.View
import android.view.ViewGroup.LayoutParams.MATCH_PARENT
import android.view.ViewGroup.LayoutParams.WRAP_CONTENT
import android.view.accessibility.AccessibilityNodeInfo
import android.view.accessibility.AccessibilityNodeInfo.AccessibilityAction
import android.widget.Button
import android.widget.LinearLayout
import frond.home.R

/** What waits until it is wanted: a line to press, and what is beneath it. */
@SuppressLint("ViewConstructor")
internal class Fold(
    context: Context,
    title: String,
    private val words: ControlWords,
    open: Boolean,
    private val noted: (Boolean) -> Unit,
) : LinearLayout(context) {
    val inside = LinearLayout(context).apply { orientation = VERTICAL }
    private val head = Head(context, title)
    private var open = open

    init {
        orientation = VERTICAL
        addView(head, LayoutParams(MATCH_PARENT, WRAP_CONTENT))
        addView(inside, LayoutParams(MATCH_PARENT, WRAP_CONTENT).apply { topMargin = context.px(R.dimen.space_2) })
        show()
        head.setOnClickListener { turn(!this.open) }
    }

    private fun turn(now: Boolean) {
        open = now
        noted(now)
        show()
    }

    private fun show() {
        inside.visibility = if (open) VISIBLE else GONE
        head.says(if (open) words.opened else words.closed, head.text)
        head.invalidate()
    }

    private inner class Head(context: Context, title: String) :
        Button(context, null, 0, android.R.style.Widget_Material_Button_Borderless) {
        private val line = Paint(Paint.ANTI_ALIAS_FLAG)
        private val arrow = Path()

        init {
            text = title
            isAllCaps = false
            stateListAnimator = null
            letters(R.dimen.text_body, R.color.text, strong = true, tight = true)
            gravity = Gravity.START or Gravity.CENTER_VERTICAL
            minHeight = context.px(R.dimen.target_least)
            minimumHeight = minHeight
            background = context.pressed(context.shape(null, R.dimen.radius_small), R.color.text, R.dimen.radius_small)
            ring(R.dimen.radius_small)
            setPaddingRelative(0, context.px(R.dimen.space_3), context.rem(2f), context.px(R.dimen.space_3))
            line.style = Paint.Style.STROKE
            line.strokeWidth = context.dp(2).toFloat()
            line.color = context.colour(R.color.quiet)
            accessibilityDelegate = object : AccessibilityDelegate() {
                override fun onInitializeAccessibilityNodeInfo(host: View, info: AccessibilityNodeInfo) {
                    super.onInitializeAccessibilityNodeInfo(host, info)
                    info.addAction(if (open) AccessibilityAction.ACTION_COLLAPSE else AccessibilityAction.ACTION_EXPAND)
                }

                override fun performAccessibilityAction(host: View, action: Int, args: Bundle?): Boolean = when (action) {
                    AccessibilityAction.ACTION_EXPAND.id -> true.also { turn(true) }
                    AccessibilityAction.ACTION_COLLAPSE.id -> true.also { turn(false) }
                    else -> super.performAccessibilityAction(host, action, args)
                }
            }
        }

        override fun onDraw(canvas: Canvas) {
            super.onDraw(canvas)
            val size = context.rem(0.35f).toFloat()
            val away = context.rem(0.75f).toFloat()
            val x = if (layoutDirection == View.LAYOUT_DIRECTION_RTL) away else width - away
            val y = height / 2f
            val tip = if (open) -size / 2 else size / 2
            arrow.rewind()
            arrow.moveTo(x - size, y - tip)
            arrow.lineTo(x, y + tip)
            arrow.lineTo(x + size, y - tip)
            canvas.drawPath(arrow, line)
        }
    }
}
