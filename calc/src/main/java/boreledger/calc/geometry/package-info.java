/** Perimeters of circles and ellipses, exact to the last digits of a double. Lengths in mm. */
package boreledger.calc.geometry;
