package frond.home.parts

import android.annotation.SuppressLint
import android.content.Context
import android.graphics.Paint
import android.os.Bundle
import android.view.Gravity
import android.view.View
import android.view.ViewGroup
import android.view.accessibility.AccessibilityNodeInfo
import android.view.accessibility.AccessibilityNodeInfo.CollectionInfo
import android.view.accessibility.AccessibilityNodeInfo.CollectionItemInfo
import android.widget.Button
import android.widget.TextView
import frond.home.R

/** One day of a month. */
class MonthDay(
    val number: String,
    /** Its whole date and what was done, for whoever does not see the grid. */
    val spoken: String,
    val inMonth: Boolean,
    val isToday: Boolean,
    /** Something was done: the number stands over a line. */
    val marked: Boolean,
    /** Opens it; none where there is nothing to open. */
    val opens: (() -> Unit)?,
)

/**
 * A month in whole weeks, as a grid that a screen reader walks by rows and columns. Where seven days do not fit beside each
 * other, large enough to be pressed and with their whole numbers, there is only its name; the days stand in a list then.
 */
fun Parts.month(name: String, weekdays: List<String>, weeks: List<List<MonthDay>>) {
    heading(name)
    val grid = MonthGrid(context, name, weekdays, weeks)
    val room = minOf(context.resources.displayMetrics.widthPixels, context.px(R.dimen.measure)) - 2 * context.px(R.dimen.space_4)
    if (grid.fits(room)) add(grid)
}

@SuppressLint("ViewConstructor")
internal class MonthGrid(context: Context, name: String, weekdays: List<String>, weeks: List<List<MonthDay>>) : ViewGroup(context) {
    private val rows = weeks.size + 1
    private val least = context.px(R.dimen.target_least)
    private var cellWidth = 0
    private var headHeight = 0
    private var cellHeight = 0

    init {
        id = R.id.month
        contentDescription = name
        for (weekday in weekdays) addView(head(weekday))
        for ((row, week) in weeks.withIndex()) {
            for ((column, day) in week.withIndex()) addView(cell(day, row + 1, column))
        }
        accessibilityDelegate = object : AccessibilityDelegate() {
            override fun onInitializeAccessibilityNodeInfo(host: View, info: AccessibilityNodeInfo) {
                super.onInitializeAccessibilityNodeInfo(host, info)
                @Suppress("DEPRECATION")
                info.setCollectionInfo(CollectionInfo.obtain(rows, DAYS, false))
            }
        }
    }

    /** The day's name as the language shortens it; said in full with each day. */
    private fun head(weekday: String) = TextView(context).apply {
        text = weekday
        letters(R.dimen.text_small, R.color.quiet, tight = true)
        gravity = Gravity.CENTER
        textAlignment = View.TEXT_ALIGNMENT_CENTER
        isSingleLine = true
        importantForAccessibility = View.IMPORTANT_FOR_ACCESSIBILITY_NO
    }

    private fun cell(day: MonthDay, row: Int, column: Int): View {
        val opens = day.opens
        val cell = if (opens == null) TextView(context) else Button(context, null, 0, android.R.style.Widget_Material_Button_Borderless)
        cell.text = day.number
        cell.contentDescription = day.spoken
        val colour = when {
            opens != null -> R.color.action
            day.inMonth -> R.color.text
            else -> R.color.quiet
        }
        cell.letters(R.dimen.text_body, colour, strong = day.isToday || day.marked, tight = true)
        cell.gravity = Gravity.CENTER
        cell.textAlignment = View.TEXT_ALIGNMENT_CENTER
        cell.setPadding(0, 0, 0, 0)
        cell.minWidth = 0
        cell.minimumWidth = 0
        if (day.marked) cell.paintFlags = cell.paintFlags or Paint.UNDERLINE_TEXT_FLAG
        val shape = context.shape(
            if (day.marked) R.color.soft else null, R.dimen.radius_small, if (day.isToday) R.color.action else null, 2,
        )
        if (opens == null) {
            cell.background = shape
        } else {
            cell.stateListAnimator = null
            cell.background = context.pressed(shape, R.color.action, R.dimen.radius_small)
            cell.ring(R.dimen.radius_small)
            cell.setOnClickListener { opens() }
        }
        cell.accessibilityDelegate = object : AccessibilityDelegate() {
            override fun onInitializeAccessibilityNodeInfo(host: View, info: AccessibilityNodeInfo) {
                super.onInitializeAccessibilityNodeInfo(host, info)
                @Suppress("DEPRECATION")
                info.setCollectionItemInfo(CollectionItemInfo.obtain(row, 1, column, 1, false))
            }
        }
        return cell
    }

    /** Whether seven days fit beside each other: each large enough to be pressed, with its whole number. */
    fun fits(width: Int): Boolean {
        val free = MeasureSpec.makeMeasureSpec(0, MeasureSpec.UNSPECIFIED)
        val widest = children().maxOfOrNull { child ->
            child.measure(free, free)
            child.measuredWidth
        } ?: 0
        return width / DAYS - GAP >= maxOf(least, widest)
    }

    override fun onMeasure(widthSpec: Int, heightSpec: Int) {
        val width = MeasureSpec.getSize(widthSpec)
        cellWidth = width / DAYS
        val free = MeasureSpec.makeMeasureSpec(0, MeasureSpec.UNSPECIFIED)
        val all = children()
        for (child in all) child.measure(free, free)
        headHeight = all.take(DAYS).maxOf { it.measuredHeight }
        cellHeight = maxOf(least, all.drop(DAYS).maxOfOrNull { it.measuredHeight } ?: 0)
        for ((at, child) in all.withIndex()) child.measure(exactly(cellWidth - GAP), exactly(if (at < DAYS) headHeight else cellHeight))
        setMeasuredDimension(width, headHeight + (rows - 1) * (cellHeight + GAP))
    }

    override fun onLayout(changed: Boolean, left: Int, top: Int, right: Int, bottom: Int) {
        val mirrored = layoutDirection == LAYOUT_DIRECTION_RTL
        for ((at, child) in children().withIndex()) {
            val (row, column) = at / DAYS to at % DAYS
            val from = column * cellWidth
            val x = if (mirrored) width - from - cellWidth else from
            val y = if (row == 0) 0 else headHeight + (row - 1) * (cellHeight + GAP) + GAP
            child.layout(x, y, x + child.measuredWidth, y + child.measuredHeight)
        }
    }

    private fun exactly(size: Int) = MeasureSpec.makeMeasureSpec(size.coerceAtLeast(0), MeasureSpec.EXACTLY)

    private companion object {
        const val DAYS = 7
        const val GAP = 2
    }
}
