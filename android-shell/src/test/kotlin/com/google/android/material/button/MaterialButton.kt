package com.google.android.material.button

import android.content.Context
import android.widget.Button

/** The accessibility checks ask whether a view is one of these; the app has none and no such library. */
class MaterialButton(context: Context) : Button(context)
