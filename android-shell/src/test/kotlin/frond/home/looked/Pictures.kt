package frond.home.looked

import android.app.Activity
import android.graphics.Bitmap
import android.graphics.Canvas
import android.os.Looper
import android.view.View
import android.view.View.MeasureSpec
import frond.home.R
import frond.home.parts.Frame
import org.robolectric.Shadows.shadowOf
import java.io.ByteArrayOutputStream
import java.io.DataOutputStream
import java.io.File
import java.util.zip.CRC32
import java.util.zip.Deflater
import java.util.zip.DeflaterOutputStream

// Pictures of what is shown, to be looked at by eye: target/pictures. They are never kept.

/** As it stands on the phone. */
fun drawn(view: View): Bitmap {
    val bitmap = Bitmap.createBitmap(view.width, view.height, Bitmap.Config.ARGB_8888)
    view.draw(Canvas(bitmap))
    return bitmap
}

fun settle() = shadowOf(Looper.getMainLooper()).idle()

/**
 * The phone's window as a picture and, where the screen is longer, all of it as another; and everything that must hold of every
 * screen, of all of it. It is laid out and drawn once for both.
 */
fun Activity.looked(name: String, shown: Shown) {
    settle()
    val window = window.decorView
    val frame = checkNotNull(window.findViewById<Frame>(R.id.frame)) { "$name: no frame" }
    drawn(window).let { picture ->
        save(picture, "$name-${shown.tag}")
        picture.recycle()
    }
    val longer = frame.scroll.getChildAt(0).height > frame.scroll.height
    whole(frame) {
        val picture = drawn(frame)
        if (longer) save(picture, "$name-${shown.tag}-whole")
        checked(name, shown, frame, picture)
        picture.recycle()
    }
}

/** Lays the screen out as long as it is, does something with it, and puts it back. */
private fun whole(frame: Frame, act: () -> Unit) {
    val hidden = frame.scroll.getChildAt(0).height - frame.scroll.height
    if (hidden <= 0) return act()
    val width = frame.width
    val height = frame.height
    lay(frame, width, height + hidden)
    try {
        act()
    } finally {
        lay(frame, width, height)
    }
}

private fun lay(view: View, width: Int, height: Int) {
    val exactly = { size: Int -> MeasureSpec.makeMeasureSpec(size, MeasureSpec.EXACTLY) }
    view.measure(exactly(width), exactly(height))
    view.layout(view.left, view.top, view.left + width, view.top + height)
}

private fun save(bitmap: Bitmap, name: String) {
    val folder = File(checkNotNull(System.getProperty("frond.pictures")))
    folder.mkdirs()
    File(folder, "$name.png").writeBytes(png(bitmap))
}

/**
 * A PNG (W3C PNG specification, third edition: signature, IHDR, IDAT, IEND) of plain rows, packed fast. The framework's own takes
 * half of the time of all pictures, to make them a little smaller.
 */
private fun png(bitmap: Bitmap): ByteArray {
    val (width, height) = bitmap.width to bitmap.height
    val pixels = IntArray(width * height)
    bitmap.getPixels(pixels, 0, width, 0, 0, width, height)
    val packed = ByteArrayOutputStream()
    DeflaterOutputStream(packed, Deflater(Deflater.BEST_SPEED), 1 shl 16).use { out ->
        val row = ByteArray(1 + 3 * width)
        for (y in 0 until height) {
            var at = 1
            for (x in 0 until width) {
                val pixel = pixels[y * width + x]
                row[at++] = (pixel shr 16).toByte()
                row[at++] = (pixel shr 8).toByte()
                row[at++] = pixel.toByte()
            }
            out.write(row)
        }
    }
    val png = ByteArrayOutputStream()
    DataOutputStream(png).run {
        write(byteArrayOf(0x89.toByte(), 'P'.code.toByte(), 'N'.code.toByte(), 'G'.code.toByte(), 13, 10, 26, 10))
        val head = ByteArrayOutputStream()
        DataOutputStream(head).run {
            writeInt(width)
            writeInt(height)
            // Eight bits of red, green and blue; no alpha, not interlaced.
            write(byteArrayOf(8, 2, 0, 0, 0))
        }
        chunk("IHDR", head.toByteArray())
        chunk("IDAT", packed.toByteArray())
        chunk("IEND", ByteArray(0))
    }
    return png.toByteArray()
}

private fun DataOutputStream.chunk(name: String, content: ByteArray) {
    val named = name.toByteArray(Charsets.US_ASCII) + content
    writeInt(content.size)
    write(named)
    writeInt(CRC32().apply { update(named) }.value.toInt())
}
