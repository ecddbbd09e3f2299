# The shortest 95 % interval of a comparison loss, JCGM 101:2008, 9.4 with x1 = 0.050, x2 = 0, u = 0.005 and r = 0.9, without drawing:
# Y = X1² + X2² is a sum of two noncentral χ², one of which is integrated over. Rscript core/src/test/R/loss.R
u <- 0.005; x <- 0.050; r <- 0.9
one <- u^2 * (1 + r); two <- u^2 * (1 - r)
off <- x / sqrt(2)
below <- function(y) {
  edge <- sqrt(y / two)
  middle <- off / sqrt(two)
  integrate(function(t) pchisq((y - two * t^2) / one, 1, off^2 / one) * dnorm(t - middle),
            max(-edge, middle - 9), min(edge, middle + 9), rel.tol = 1e-11, subdivisions = 2000)$value
}
at <- function(p) uniroot(function(y) below(y) - p, c(1e-5, 9e-3), tol = 1e-14)$root
width <- function(p) at(p + 0.95) - at(p)
best <- optimize(width, c(0.008, 0.022), tol = 1e-7)$minimum
cat(R.version.string, "\n", sprintf("%.4f\n", 1e6 * c(at(best), at(best + 0.95))))
