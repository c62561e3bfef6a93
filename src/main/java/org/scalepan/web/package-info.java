/** The HTTP face: routes, parameters, problems and renderers. It knows no arithmetic of the trade. */
@NullMarked
package org.scalepan.web;

import org.jspecify.annotations.NullMarked;
