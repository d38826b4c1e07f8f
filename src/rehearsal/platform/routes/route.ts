import type { BuildFile } from '../attachments.ts'
import type { Context } from '../context.ts'

/** A request whose path, token and body are already checked. */
export interface RouteRequest {
  /** The values of the path's placeholders, in order. */
  params: string[]
  query: URLSearchParams
  body: unknown
  files: BuildFile[]
}

export interface Reply {
  status: number
  body?: unknown
  headers?: Record<string, string>
}

/** Does what a request asks; throws a Refusal where the platform would. */
export type Route = (context: Context, request: RouteRequest) => Reply

/** Routes by method and path template of the published API. */
export type Routes = Record<string, Route>

export const ok = (body: unknown): Reply => ({ status: 200, body })
export const noContent = (): Reply => ({ status: 204 })
