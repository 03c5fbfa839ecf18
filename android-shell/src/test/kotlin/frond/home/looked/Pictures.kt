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
import java.io.File

// Pictures of what is shown, to be looked at by eye: target/pictures. They are never kept.

/** As it stands on the phone. */
fun drawn(view: View): Bitmap {
    val bitmap = Bitmap.createBitmap(view.width, view.height, Bitmap.Config.ARGB_8888)
    view.draw(Canvas(bitmap))
    return bitmap
}

fun settle() = shadowOf(Looper.getMainLooper()).idle()

/** Two pictures: the phone's window, and where the screen is longer, all of it. */
fun Activity.picture(name: String, shown: Shown) {
    settle()
    val window = window.decorView
    save(drawn(window), "$name-${shown.tag}")
    val frame = window.findViewById<Frame>(R.id.frame) ?: return
    whole(frame) { save(drawn(frame), "$name-${shown.tag}-whole") }
}

/** Lays the screen out as long as it is, does something with it, and puts it back. */
fun whole(frame: Frame, act: () -> Unit) {
    val hidden = frame.scroll.getChildAt(0).height - frame.scroll.height
    if (hidden <= 0) return act()
    val width = frame.width
    val height = frame.height
    lay(frame, width, height + hidden)
    act()
    lay(frame, width, height)
}

private fun lay(view: View, width: Int, height: Int) {
    val exactly = { size: Int -> MeasureSpec.makeMeasureSpec(size, MeasureSpec.EXACTLY) }
    view.measure(exactly(width), exactly(height))
    view.layout(view.left, view.top, view.left + width, view.top + height)
}

private fun save(bitmap: Bitmap, name: String) {
    val folder = File(checkNotNull(System.getProperty("frond.pictures")))
    folder.mkdirs()
    File(folder, "$name.png").outputStream().use { bitmap.compress(Bitmap.CompressFormat.PNG, 100, it) }
    bitmap.recycle()
}
