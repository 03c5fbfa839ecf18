package frond.home.parts

import android.annotation.SuppressLint
import android.content.Context
import android.view.View
import android.view.ViewGroup
import android.widget.LinearLayout
import frond.home.R

// How things are set beneath and beside each other, where the phone's own layouts do not do.

/** A column no wider than a line is comfortably read. */
@SuppressLint("ViewConstructor")
internal class Column(context: Context, private val widest: Int? = null) : LinearLayout(context) {
    init {
        orientation = VERTICAL
    }

    override fun onMeasure(widthSpec: Int, heightSpec: Int) {
        val given = MeasureSpec.getSize(widthSpec)
        val narrow = widest?.let { minOf(it, given) } ?: given
        super.onMeasure(MeasureSpec.makeMeasureSpec(narrow, MeasureSpec.EXACTLY), heightSpec)
    }
}

/** A column of things that are offered alike: each is as tall as the tallest, whichever words are longer. */
internal class Alike(context: Context) : LinearLayout(context) {
    init {
        orientation = VERTICAL
    }

    override fun onMeasure(widthSpec: Int, heightSpec: Int) {
        for (child in children()) child.layoutParams.height = LayoutParams.WRAP_CONTENT
        super.onMeasure(widthSpec, heightSpec)
        val tallest = children().maxOfOrNull { it.measuredHeight } ?: return
        for (child in children()) child.layoutParams.height = tallest
        super.onMeasure(widthSpec, heightSpec)
    }
}

/** As many equal cells beside each other as fit, in rows; it mirrors where the language does. */
@SuppressLint("ViewConstructor")
internal class Grid(context: Context, private val leastCell: Int) : ViewGroup(context) {
    private val gap = context.px(R.dimen.space_2)
    private var columns = 1
    private var cellWidth = 0
    private var cellHeight = 0

    override fun onMeasure(widthSpec: Int, heightSpec: Int) {
        val width = MeasureSpec.getSize(widthSpec)
        columns = ((width + gap) / (leastCell + gap)).coerceIn(1, childCount.coerceAtLeast(1))
        cellWidth = (width - gap * (columns - 1)) / columns
        cellHeight = 0
        for (child in children()) {
            child.measure(exactly(cellWidth), MeasureSpec.makeMeasureSpec(0, MeasureSpec.UNSPECIFIED))
            cellHeight = maxOf(cellHeight, child.measuredHeight)
        }
        for (child in children()) child.measure(exactly(cellWidth), exactly(cellHeight))
        val rows = (childCount + columns - 1) / columns
        setMeasuredDimension(width, rows * cellHeight + (rows - 1).coerceAtLeast(0) * gap)
    }

    override fun onLayout(changed: Boolean, left: Int, top: Int, right: Int, bottom: Int) {
        val mirrored = layoutDirection == View.LAYOUT_DIRECTION_RTL
        for ((at, child) in children().withIndex()) {
            val from = (at % columns) * (cellWidth + gap)
            val x = if (mirrored) width - from - cellWidth else from
            val y = (at / columns) * (cellHeight + gap)
            child.layout(x, y, x + cellWidth, y + cellHeight)
        }
    }

    private fun exactly(size: Int) = MeasureSpec.makeMeasureSpec(size, MeasureSpec.EXACTLY)
}

/** Things beside each other that go on in the next row where they do not fit. */
@SuppressLint("ViewConstructor")
internal class Flow(context: Context, private val gap: Int) : ViewGroup(context) {
    override fun onMeasure(widthSpec: Int, heightSpec: Int) {
        val width = MeasureSpec.getSize(widthSpec)
        for (child in children()) {
            child.measure(
                MeasureSpec.makeMeasureSpec(width, MeasureSpec.AT_MOST),
                MeasureSpec.makeMeasureSpec(0, MeasureSpec.UNSPECIFIED),
            )
        }
        setMeasuredDimension(width, placed(width) { _, _, _, _ -> })
    }

    override fun onLayout(changed: Boolean, left: Int, top: Int, right: Int, bottom: Int) {
        val mirrored = layoutDirection == View.LAYOUT_DIRECTION_RTL
        placed(width) { child, from, y, row ->
            val x = if (mirrored) width - from - child.measuredWidth else from
            val down = y + (row - child.measuredHeight) / 2
            child.layout(x, down, x + child.measuredWidth, down + child.measuredHeight)
        }
    }

    /** Walks the rows; answers how tall they are together. */
    private fun placed(width: Int, place: (View, Int, Int, Int) -> Unit): Int {
        var y = 0
        val row = mutableListOf<Pair<View, Int>>()
        fun end() {
            val tall = row.maxOfOrNull { it.first.measuredHeight } ?: return
            for ((child, from) in row) place(child, from, y, tall)
            y += tall
            row.clear()
        }
        var x = 0
        for (child in children()) {
            if (x > 0 && x + child.measuredWidth > width) {
                end()
                x = 0
            }
            row += child to x
            x += child.measuredWidth + gap
        }
        end()
        return y
    }
}

internal fun ViewGroup.children(): List<View> = (0 until childCount).map(::getChildAt).filter { it.visibility != View.GONE }
