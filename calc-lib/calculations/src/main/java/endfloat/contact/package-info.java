/**
 * Hertz pressure where two curved bodies touch: along a line, at a point, in an ellipse. Start with
 * {@link endfloat.contact.HertzContact}; the ellipse is in {@link endfloat.contact.ContactEllipse}.
 */
package endfloat.contact;
