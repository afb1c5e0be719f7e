package roundwright.pattern.chart;

import java.awt.geom.Point2D;

/** The line that the feet of a chart's signs stand on, from 0 where the round begins to 1 where it ends. */
interface Baseline {
    /** The point at a share of the line, so far away from the stitches below; negative towards them. */
    Point2D at(double share, double out);

    /** How far a sign that stands there is turned from upright, in radians, clockwise on the sheet. */
    double turn(double share);

    double length();

    /**
     * Round two half circles joined by two straight sides, anticlockwise from where the upper side begins at the right; a ring where the
     * sides have no length.
     *
     * @param half half the length of a straight side
     * @param mirrored clockwise, from the left
     */
    record Loop(double centreX, double centreY, double half, double radius, boolean mirrored) implements Baseline {
        @Override
        public double length() {
            return 4 * half + 2 * Math.PI * radius;
        }

        @Override
        public Point2D at(double share, double out) {
            double along = share * length();
            double lean = lean(along);
            double away = radius + out;
            double x = sideways(along) - Math.sin(lean) * away;
            return new Point2D.Double(mirrored ? centreX - x : centreX + x, centreY - Math.cos(lean) * away);
        }

        @Override
        public double turn(double share) {
            double lean = lean(share * length());
            return mirrored ? lean : -lean;
        }

        private double curve() {
            return Math.PI * radius;
        }

        /** How far the outward direction has turned to the left from upwards. */
        private double lean(double along) {
            double left = Math.max(0, Math.min(curve(), along - 2 * half));
            double right = Math.max(0, Math.min(curve(), along - 4 * half - curve()));
            return (left + right) / radius;
        }

        /** How far right of the middle the centre lies about which the line bends there, or the foot on the straight. */
        private double sideways(double along) {
            double upper = Math.min(along, 2 * half);
            double lower = Math.max(0, Math.min(2 * half, along - 2 * half - curve()));
            return half - upper + lower;
        }
    }

    /** A straight row between two edges; leftward from the right, or rightward from the left. */
    record Row(double left, double right, double y, boolean leftward) implements Baseline {
        @Override
        public Point2D at(double share, double out) {
            double along = share * length();
            return new Point2D.Double(leftward ? right - along : left + along, y - out);
        }

        @Override
        public double turn(double share) {
            return 0;
        }

        @Override
        public double length() {
            return right - left;
        }
    }
}
