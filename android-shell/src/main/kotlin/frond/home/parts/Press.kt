package frond.home.parts

import android.annotation.SuppressLint
import android.content.Context
import android.graphics.Paint
import android.view.Gravity
import android.view.View
import android.widget.Button
import frond.home.R

/** How something to press looks. */
enum class PressLook {
    /** The next thing to do: the largest. */
    NEXT,

    /** One of several that are offered alike. */
    EQUAL,

    /** What else can be done. */
    QUIET,
}

/** Something to press. */
@SuppressLint("ViewConstructor")
internal class Press(context: Context, words: String, look: PressLook, spoken: String? = null, act: () -> Unit) :
    Button(context, null, 0, android.R.style.Widget_Material_Button_Borderless) {
    init {
        text = words
        contentDescription = spoken
        isAllCaps = false
        stateListAnimator = null
        minWidth = context.px(R.dimen.target_least)
        minimumWidth = minWidth
        when (look) {
            PressLook.NEXT -> {
                letters(R.dimen.text_lead, R.color.on_action, strong = true, tight = true)
                filled(R.color.action, R.color.action, R.color.on_action)
                tall(context.px(R.dimen.target_press) * 5 / 4, R.dimen.space_4, R.dimen.space_5)
            }
            PressLook.EQUAL -> {
                letters(R.dimen.text_body, R.color.on_soft, strong = true, tight = true)
                filled(R.color.soft, R.color.edge, R.color.on_soft)
                tall(context.px(R.dimen.target_press), R.dimen.space_3, R.dimen.space_4)
            }
            PressLook.QUIET -> {
                letters(R.dimen.text_body, R.color.action, tight = true)
                paintFlags = paintFlags or Paint.UNDERLINE_TEXT_FLAG
                gravity = Gravity.START or Gravity.CENTER_VERTICAL
                background = context.pressed(context.shape(null, R.dimen.radius_small), R.color.action, R.dimen.radius_small)
                ring(R.dimen.radius_small)
                tall(context.px(R.dimen.target_least), R.dimen.space_2, null)
            }
        }
        setOnClickListener { act() }
    }

    private fun filled(fill: Int, edge: Int, over: Int) {
        gravity = Gravity.CENTER
        textAlignment = View.TEXT_ALIGNMENT_CENTER
        background = context.pressed(context.shape(fill, R.dimen.radius_press, edge), over, R.dimen.radius_press)
        ring(R.dimen.radius_press)
    }

    private fun tall(least: Int, block: Int, inline: Int?) {
        minHeight = least
        minimumHeight = least
        val beside = inline?.let(context::px) ?: 0
        setPaddingRelative(beside, context.px(block), beside, context.px(block))
    }
}
