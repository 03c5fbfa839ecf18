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

/**
 * As many equal cells beside each other as fit, in rows; it mirrors where the language does. What stands under the last cell
 * begins where that cell does, as far as there is room for it.
 */
@SuppressLint("ViewConstructor")
internal class Grid(context: Context, private val leastCell: Int) : ViewGroup(context) {
    private val gap = context.px(R.dimen.space_2)
    private val below = context.px(R.dimen.space_1)
    private var columns = 1
    private var cellWidth = 0
    private var cellHeight = 0

    private var under: View? = null

    /** What stands beneath the last cell; once all cells are there, so that it is read after them. */
    fun under(view: View) {
        under = view
        addView(view)
    }

    private fun cells(): List<View> = children().filter { it !== under }

    override fun onMeasure(widthSpec: Int, heightSpec: Int) {
        val width = MeasureSpec.getSize(widthSpec)
        val cells = cells()
        columns = ((width + gap) / (leastCell + gap)).coerceIn(1, cells.size.coerceAtLeast(1))
        cellWidth = (width - gap * (columns - 1)) / columns
        cellHeight = 0
        for (child in cells) {
            child.measure(exactly(cellWidth), MeasureSpec.makeMeasureSpec(0, MeasureSpec.UNSPECIFIED))
            cellHeight = maxOf(cellHeight, child.measuredHeight)
        }
        for (child in cells) child.measure(exactly(cellWidth), exactly(cellHeight))
        under?.measure(MeasureSpec.makeMeasureSpec(width, MeasureSpec.AT_MOST), MeasureSpec.makeMeasureSpec(0, MeasureSpec.UNSPECIFIED))
        setMeasuredDimension(width, rows(cells.size) + (under?.let { below + it.measuredHeight } ?: 0))
    }

    /** How tall the rows of so many cells are. */
    private fun rows(cells: Int): Int {
        val rows = (cells + columns - 1) / columns
        return rows * cellHeight + (rows - 1).coerceAtLeast(0) * gap
    }

    override fun onLayout(changed: Boolean, left: Int, top: Int, right: Int, bottom: Int) {
        val cells = cells()
        for ((at, child) in cells.withIndex()) {
            val x = across(at % columns * (cellWidth + gap), cellWidth)
            val y = (at / columns) * (cellHeight + gap)
            child.layout(x, y, x + cellWidth, y + cellHeight)
        }
        val under = under ?: return
        val from = (cells.size - 1).coerceAtLeast(0) % columns * (cellWidth + gap)
        val x = across(minOf(from, width - under.measuredWidth), under.measuredWidth)
        val y = rows(cells.size) + below
        under.layout(x, y, x + under.measuredWidth, y + under.measuredHeight)
    }

    /** From the side where lines begin, in the view's own measure. */
    private fun across(from: Int, wide: Int) = if (layoutDirection == View.LAYOUT_DIRECTION_RTL) width - from - wide else from

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
