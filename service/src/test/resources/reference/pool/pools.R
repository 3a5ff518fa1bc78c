# Posteriors of two small pools by JAGS (Debian packages jags and r-cran-rjags). Usage: Rscript pools.R [chains 6] [kept 150000];
# reads trials.csv, writes posterior.csv with quantiles and their Monte Carlo standard errors from the spread over chains.
suppressMessages(library(rjags))
args <- commandArgs(TRUE)
chains <- if (length(args) > 0) as.integer(args[1]) else 6L
kept <- if (length(args) > 1) as.integer(args[2]) else 150000L
levels <- c(0.05, 0.10, 0.25, 0.50, 0.75, 0.90, 0.95)
trials <- read.csv("trials.csv")
one <- function(pool) {
  d <- trials[trials$pool == pool, ]
  flyers <- max(d$flyer) + 1
  data <- list(F = flyers, N = nrow(d), of = d$flyer, x = d$logRatio, y = match(d$outcome, c("none", "partial", "separated")),
    w = c(0.25, 0.5, 0.25), Ts = c(0.10, 0.166, 0.25), Ss = c(0.15, 0.27, 0.40))
  start <- lapply(seq_len(chains), function(k) list(.RNG.name = "base::Mersenne-Twister", .RNG.seed = 100 * pool + k))
  m <- jags.model("model.jags", data, start, n.chains = chains, n.adapt = 3000, quiet = TRUE)
  update(m, 5000, progress.bar = "none")
  nodes <- c("mu", "ls", "ld", "c", "x99")
  wanted <- c(paste0(nodes, "[", flyers, "]"), paste0(nodes, "[1]"), paste0(nodes, "[2]"))
  draws <- coda.samples(m, wanted, kept, progress.bar = "none")
  each <- simplify2array(lapply(draws, function(chain) apply(chain, 2, quantile, levels)))
  value <- apply(each, 1:2, mean)
  error <- apply(each, 1:2, sd) / sqrt(chains)
  data.frame(pool = pool, node = colnames(value), round(t(value), 5), round(t(error), 5))
}
result <- do.call(rbind, lapply(unique(trials$pool), one))
names(result) <- c("pool", "node", paste0("q", levels), paste0("e", levels))
write.csv(result, "posterior.csv", row.names = FALSE, quote = FALSE)
